/*
 * The payloads of the wire protocol, version 1: what a host says to a board is decoded, what a board says is encoded.
 */
#ifndef STAND_MESSAGE_H
#define STAND_MESSAGE_H

#include <stdbool.h>
#include <stdint.h>

#include "frame.h"

#define PROTOCOL_VERSION 1u
#define DRIVES_MAX 2u
#define METERS_MAX 2u
#define ANALOGS_MAX 4u
#define DUTY_FULL 65536ul
#define STREAM_PERIOD_MIN_MS 2u
#define STREAM_PERIOD_MAX_MS 1000u
#define NO_CURRENT_CHANNEL 0xFFu

enum message_type {
    MESSAGE_HELLO = 0x01,
    MESSAGE_ARM = 0x02,
    MESSAGE_DRIVE = 0x03,
    MESSAGE_STREAM = 0x04,
    MESSAGE_KEEP_ALIVE = 0x05,
    MESSAGE_MAKE_SAFE = 0x06,
    MESSAGE_FROM_BOARD = 0x80, /* types from here on are the board's */
    MESSAGE_IDENTITY = 0x81,
    MESSAGE_ACKNOWLEDGE = 0x82,
    MESSAGE_REFUSE = 0x83,
    MESSAGE_SAMPLE = 0x84,
    MESSAGE_EVENT = 0x85
};

enum refuse_reason {
    REFUSE_NOTHING = 0, /* not refused */
    REFUSE_UNKNOWN_TYPE = 1,
    REFUSE_WRONG_LENGTH = 2,
    REFUSE_OUT_OF_RANGE = 3,
    REFUSE_NOT_ARMED = 4,
    REFUSE_WRONG_BOOT_ID = 5,
    REFUSE_INPUT_OPEN = 6
};

enum state { STATE_SAFE = 0, STATE_ARMED = 1 };

enum event_kind { EVENT_STARTED = 1, EVENT_ARMED = 2, EVENT_MADE_SAFE = 3 };

enum safe_reason {
    REASON_NONE = 0,
    REASON_HOST_ASKED = 1,
    REASON_LINK_LOST = 2,
    REASON_EMERGENCY_STOP = 3,
    REASON_GUARD_OPEN = 4,
    REASON_OVER_CURRENT = 5,
    REASON_RESET = 6
};

enum input_bit { INPUT_EMERGENCY_STOP = 1, INPUT_GUARD = 2, INPUTS_CLOSED = 3 };

enum reset_cause { RESET_POWER_ON = 1, RESET_EXTERNAL = 2, RESET_BROWN_OUT = 4, RESET_WATCHDOG = 8 };

/* What the board is; its limits are also the ones the board keeps. */
struct identity {
    uint8_t unique_id[8];
    uint8_t firmware_major;
    uint8_t firmware_minor;
    uint8_t firmware_patch;
    uint32_t boot_id;
    uint8_t reset_cause;
    uint8_t meters;
    uint8_t drives;
    uint8_t analogs;
    uint32_t tick_hz;
    uint16_t pwm_hz[DRIVES_MAX];
    uint16_t ramp_limit;      /* 1/65536 per millisecond */
    uint16_t link_timeout_ms; /* 100 .. 1000 */
    uint8_t current_channel;  /* or NO_CURRENT_CHANNEL */
    uint16_t over_current_limit;
    uint16_t over_current_ms;
    uint8_t kind[8];
};

struct meter_reading {
    uint32_t count;     /* edges since reset */
    uint32_t last_edge; /* board time of the last edge counted */
};

struct analog_reading {
    uint16_t mean; /* left-justified: 65536 would be the converter's reference */
    uint16_t min;
    uint16_t max;
};

struct sample {
    uint32_t time;
    struct meter_reading meters[METERS_MAX];
    struct analog_reading analogs[ANALOGS_MAX];
    uint16_t conversions;
    uint32_t applied[DRIVES_MAX];
    uint8_t state;
    uint8_t inputs;
    uint16_t events;
};

struct event {
    uint16_t number;
    uint32_t time;
    uint8_t kind;
    uint8_t reason;
    int32_t detail;
};

/* A host message. Only the fields of its type mean something. */
struct command {
    uint8_t type;
    uint32_t boot_id;   /* arm */
    uint8_t channel;    /* drive */
    uint32_t duty;      /* drive, 0 .. DUTY_FULL */
    uint16_t ramp;      /* drive, 1/65536 per millisecond; 0 is the board's own limit */
    uint16_t period_ms; /* stream, 0 is off */
};

struct refusal {
    enum refuse_reason reason;
    int32_t detail;
};

/* A payload to send: the encoders fill it in. */
struct payload {
    uint8_t length;
    uint8_t bytes[FRAME_PAYLOAD_MAX];
};

/* Decodes a sound frame of the board's version. A refusal of REFUSE_NOTHING means that `command` holds it. */
struct refusal message_decode(const struct frame *frame, uint8_t drives, struct command *command);

void message_encode_identity(const struct identity *identity, struct payload *payload);
void message_encode_acknowledge(uint16_t sequence, uint8_t type, struct payload *payload);
void message_encode_refuse(uint16_t sequence, uint8_t type, struct refusal refusal, struct payload *payload);
void message_encode_sample(const struct sample *sample, struct payload *payload);
void message_encode_event(const struct event *event, struct payload *payload);

#endif
