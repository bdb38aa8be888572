/*
 * A board on a bench in virtual time: the real core over made-up hardware, and the host's end of a line of 25 bytes per
 * millisecond. Nothing here reads a clock.
 */
#ifndef STAND_BENCH_H
#define STAND_BENCH_H

#include <stdbool.h>
#include <stdint.h>

#include "board.h"
#include "hal.h"

#define TICKS_PER_MS 2000u
#define BOOT_ID 0xCAFE0001u
#define HEARD_MAX 4096u

/* A frame from the board as the host heard it. */
struct heard {
    uint8_t version;
    uint8_t type;
    uint16_t sequence;
    uint8_t length;
    uint8_t payload[FRAME_PAYLOAD_MAX];
};

/* The hardware: tests set the inputs and look at the outputs. */
struct bench_hardware {
    uint32_t ticks;
    uint32_t duty[DRIVES_MAX];
    bool contactor;
    bool lamp;
    uint8_t inputs;
    struct meter_reading meters[METERS_MAX];
    uint16_t analogs[ANALOGS_MAX];
    unsigned conversions_per_ms;
    bool line_blocked; /* the transmit ring does not drain */
    unsigned watchdog_kicks;
};

extern struct bench_hardware hardware;
extern struct board board;
extern struct identity bench_identity;
extern struct heard heard[HEARD_MAX];
extern unsigned heard_count;
extern unsigned heard_bad; /* frames that the host had to drop */

/* Fresh hardware with closed inputs, a fresh board, board time at `ticks`. */
void bench_start_at(uint32_t ticks);
void bench_start(void);

/* A reset of the board only: the hardware and the line stay as they are. */
void bench_reset_board(uint8_t reset_cause);

void bench_run_ticks(uint32_t ticks);
void bench_run_ms(uint32_t ms);

/* Sends a command and gives the board half a millisecond. Returns its sequence number. */
uint16_t bench_send(uint8_t type, const uint8_t *payload, uint8_t length);
uint16_t bench_send_version(uint8_t version, uint8_t type, const uint8_t *payload, uint8_t length);
uint16_t bench_arm(void);
uint16_t bench_drive(uint8_t channel, uint32_t duty, uint16_t ramp);
uint16_t bench_stream(uint16_t period_ms);
uint16_t bench_make_safe(void);
uint16_t bench_keep_alive(void);
/* Raw bytes, with as much time as the line takes for them. */
void bench_send_bytes(const uint8_t *bytes, uint32_t length);

/* Runs on with a keep-alive every 250 ms. */
void bench_run_alive_ms(uint32_t ms);

/* A host that opens the line anew: it hears nothing before the first delimiter. */
void bench_open_line(void);

/* Forgets what was heard. */
void bench_forget(void);

/* The last frame of the type, or NULL. */
const struct heard *bench_last(uint8_t type);
unsigned bench_count(uint8_t type);

/* Checks that the last answer acknowledges, or refuses with reason and detail. */
void bench_check_acknowledged(uint16_t sequence, uint8_t type);
void bench_check_refused(uint16_t sequence, uint8_t type, uint8_t reason, int32_t detail);

/* Checks outputs and state. */
void bench_check_safe(void);

/* Checks the last event heard. */
void bench_check_event(uint8_t kind, uint8_t reason, int32_t detail);

#endif
