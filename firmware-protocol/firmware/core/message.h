/*
 * The payloads of the wire protocol, version 1: what a host says to a board is decoded, what a board says is encoded.
 */
#ifndef STAND_MESSAGE_H
#define STAND_MESSAGE_H

#include <stdbool.h>
#include <stdint.h>

#include "description.h"
#include "frame.h"
#include "hal.h"

#define PROTOCOL_VERSION 1u
#define FIRMWARE_MAJOR 1u
#define FIRMWARE_MINOR 0u
#define FIRMWARE_PATCH 0u

#define STREAM_PERIOD_MAX_MS 1000u
#define WINDOW_PERIOD_MIN_MS 100u
#define WINDOW_PERIOD_MAX_MS 10000u
#define BLOBS 2u
#define BLOB_BYTES_MAX 256u
#define BLOB_READ_MAX 64u
#define BLOB_WRITE_MAX 32u
#define DITHER_AMPLITUDE_MAX 8192u
#define DITHER_MIN_HZ 50u
#define DITHER_MAX_HZ 250u

enum message_type {
    MESSAGE_HELLO = 0x01,
    MESSAGE_ARM = 0x02,
    MESSAGE_DRIVE = 0x03,
    MESSAGE_STREAM = 0x04,
    MESSAGE_KEEP_ALIVE = 0x05,
    MESSAGE_MAKE_SAFE = 0x06,
    MESSAGE_READ_LIMITS = 0x07,
    MESSAGE_TIGHTEN = 0x08,
    MESSAGE_EVENTS_FROM = 0x09,
    MESSAGE_SELF_TEST = 0x0A,
    MESSAGE_BLOB_READ = 0x0B,
    MESSAGE_BLOB_WRITE = 0x0C,
    MESSAGE_BLOB_COMMIT = 0x0D,
    MESSAGE_WINDOWS = 0x0E,
    MESSAGE_DITHER = 0x0F,
    MESSAGE_FROM_BOARD = 0x80, /* types from here on are the board's */
    MESSAGE_IDENTITY = 0x81,
    MESSAGE_ACKNOWLEDGE = 0x82,
    MESSAGE_REFUSE = 0x83,
    MESSAGE_SAMPLE = 0x84,
    MESSAGE_EVENT = 0x85,
    MESSAGE_LIMITS = 0x86,
    MESSAGE_SELF_TEST_RESULT = 0x87,
    MESSAGE_BLOB_DATA = 0x88,
    MESSAGE_SHORT_SAMPLE = 0x89,
    MESSAGE_PULSE_WINDOW = 0x8A
};

/* Payload bytes of what the board says. */
enum payload_length {
    IDENTITY_LENGTH = 39,
    SAMPLE_LENGTH = 58,
    SHORT_SAMPLE_LENGTH = 30,
    EVENT_LENGTH = 12,
    PULSE_WINDOW_LENGTH = 57,
    BLOB_DATA_MAX = 5 + 64,
    SAID_MAX = BLOB_DATA_MAX /* the longest of all */
};

enum refuse_reason {
    REFUSE_NOTHING = 0, /* not refused */
    REFUSE_UNKNOWN_TYPE = 1,
    REFUSE_WRONG_LENGTH = 2,
    REFUSE_OUT_OF_RANGE = 3,
    REFUSE_NOT_ARMED = 4,
    REFUSE_WRONG_BOOT_ID = 5,
    REFUSE_INPUT_OPEN = 6,
    REFUSE_WOULD_WIDEN = 7,
    REFUSE_LOCKED = 8,
    REFUSE_BUSY = 9,
    REFUSE_NOT_SAFE = 10,
    REFUSE_NOT_STORED = 11,
    REFUSE_CONTACTOR = 12
};

enum state { STATE_SAFE = 0, STATE_ARMED = 1, STATE_PROVING = 2, STATE_LOCKED = 3 };

enum event_kind { EVENT_STARTED = 1, EVENT_ARMED = 2, EVENT_MADE_SAFE = 3, EVENT_LOCKED = 4 };

enum safe_reason {
    REASON_NONE = 0,
    REASON_HOST_ASKED = 1,
    REASON_LINK_LOST = 2,
    REASON_EMERGENCY_STOP = 3,
    REASON_GUARD_OPEN = 4,
    REASON_OVER_CURRENT = 5,
    REASON_RESET = 6,
    REASON_LEVEL_LOW = 7,
    REASON_OVERRIDE_IN = 8,
    REASON_CONTACTOR = 9,
    REASON_RUN_TIME = 10,
    REASON_OVER_PRESSURE = 11,
    REASON_DEAD_HEAD = 12,
    REASON_DRY_RUN = 13,
    REASON_OVER_VOLTAGE = 14,
    REASON_HARDWARE = 15
};

/* Details of REASON_CONTACTOR. */
enum contactor_fault { CONTACTOR_DID_NOT_CLOSE = 0, CONTACTOR_OPENED = 1 };

enum stream_kind { STREAM_SAMPLES = 0, STREAM_SHORT_SAMPLES = 1 };

/* What the identity tells beside the description. */
struct identity {
    uint8_t unique_id[UNIQUE_ID_BYTES];
    uint8_t firmware_major;
    uint8_t firmware_minor;
    uint8_t firmware_patch;
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

/* Times between the edges of one meter in one window, in ticks. */
struct pulse_window {
    uint32_t begin; /* board time; an edge of this moment belongs to the window */
    uint32_t end;   /* an edge of this moment belongs to the next */
    uint16_t edges;
    uint32_t first_edge;
    uint32_t last_edge;
    uint16_t intervals;
    uint32_t sum;
    uint64_t squares;
    uint64_t lagged;
    uint32_t least;
    uint32_t most;
    uint16_t long_ones;
    uint16_t short_ones;
    uint32_t reference;
};

/* A host message. Only the fields of its type mean something. */
struct command {
    uint8_t type;
    uint8_t channel;      /* drive, dither */
    uint8_t kind;         /* stream: enum stream_kind */
    uint8_t limit;        /* tighten: enum limit */
    uint8_t blob;         /* blob-read, blob-write, blob-commit */
    uint8_t count;        /* bytes of blob-read and blob-write */
    uint16_t ramp;        /* drive, 1/65536 per millisecond; 0 is the board's own limit */
    uint16_t period_ms;   /* stream, windows; 0 is off */
    uint16_t number;      /* events-from */
    uint16_t offset;      /* blob-read, blob-write */
    uint16_t length;      /* blob-commit */
    uint16_t crc;         /* blob-commit */
    uint16_t amplitude;   /* dither, 1/65536 of duty; 0 is off */
    uint16_t hz;          /* dither */
    uint32_t boot_id;     /* arm */
    uint32_t duty;        /* drive, 0 .. DUTY_FULL */
    uint32_t value;       /* tighten */
    const uint8_t *bytes; /* blob-write; in the frame */
};

struct refusal {
    enum refuse_reason reason;
    int32_t detail;
};

/* A payload to send. It lies where frame_encode wants it, so that the frame is made around it. */
struct payload {
    uint8_t length;
    uint8_t wire[FRAME_WIRE_MAX(SAID_MAX)];
};

static inline uint8_t *payload_bytes(struct payload *payload) {
    return payload->wire + FRAME_PAYLOAD_AT;
}

/* Decodes a sound frame of the board's version. A refusal of REFUSE_NOTHING means that `command` holds it. */
struct refusal message_decode(const struct frame *frame, uint8_t drives, struct command *command);

void message_encode_identity(const struct identity *identity, const struct description *board,
                             struct payload *payload);
void message_encode_acknowledge(uint16_t sequence, uint8_t type, struct payload *payload);
void message_encode_refuse(uint16_t sequence, uint8_t type, struct refusal refusal, struct payload *payload);
void message_encode_sample(const struct sample *sample, struct payload *payload);
void message_encode_short_sample(const struct sample *sample, struct payload *payload);
void message_encode_event(const struct event *event, struct payload *payload);
void message_encode_limits(const uint32_t limits[LIMITS], struct payload *payload);
void message_encode_self_test(const struct self_test *result, struct payload *payload);
/* The caller fills in the `count` bytes behind the head, which it returns. */
uint8_t *message_encode_blob_data(uint8_t blob, uint16_t offset, uint16_t total, uint8_t count,
                                  struct payload *payload);
void message_encode_pulse_window(uint8_t meter, const struct pulse_window *window, struct payload *payload);

#endif
