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
#define HEARD_MAX 8192u
#define EDGES_WAITING 16u
#define AUTO_FEEDBACK (-1)
#define ALL_CLOSED ((uint8_t)(INPUTS_WATCHED | INPUT_FEEDBACK)) /* of an armed board */

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
    uint32_t contactor_since;
    bool lamp;
    uint8_t inputs;  /* the watched ones */
    int feedback;    /* 0, 1, or AUTO_FEEDBACK: ten milliseconds behind the contactor */
    struct meter_reading meters[METERS_MAX];
    struct edge edges[METERS_MAX][EDGES_WAITING];
    unsigned edges_waiting[METERS_MAX];
    uint16_t analogs[ANALOGS_MAX];
    unsigned conversions_per_ms;
    bool line_blocked; /* the transmit ring does not drain */
    unsigned watchdog_kicks;
    struct self_test self_test; /* its result, `self_test_ms` after it began */
    uint32_t self_test_ms;
};

/* Memory that survives resets and power cuts. */
struct bench_store {
    uint8_t bytes[STORE_BYTES];
    unsigned writes;
    unsigned power_lasts; /* so many writes are whole; the next is spoilt and no later one happens */
    uint8_t spoilt;       /* what the spoilt byte holds then */
    bool power_cut;
};

extern struct bench_hardware hardware;
extern struct board board;
extern struct bench_store store;
extern struct description description;
extern struct heard heard[HEARD_MAX];
extern unsigned heard_count;
extern unsigned heard_bad; /* frames that the host had to drop */

/* An edge of a meter at the present moment, or at a given one. */
void bench_edge(uint8_t meter);
void bench_edge_at(uint8_t meter, uint32_t time);

/* A blank store without power cuts. */
void bench_store_blank(void);

/* Fresh hardware with closed inputs and a blank store, a fresh board, board time at `ticks`. */
void bench_start_at(uint32_t ticks);
void bench_start(void);

/* A reset of the board only: the hardware and the line stay as they are, but the outputs drop. */
void bench_reset_board(uint8_t reset_cause);

void bench_run_ticks(uint32_t ticks);
void bench_run_ms(uint32_t ms);

/* Sends a command and gives the board half a millisecond. Returns its sequence number. */
uint16_t bench_send(uint8_t type, const uint8_t *payload, uint8_t length);
uint16_t bench_send_version(uint8_t version, uint8_t type, const uint8_t *payload, uint8_t length);
uint16_t bench_send_arm(void);
/* Arms and waits for the contactor's proof. */
uint16_t bench_arm(void);
uint16_t bench_drive(uint8_t channel, uint32_t duty, uint16_t ramp);
uint16_t bench_stream(uint16_t period_ms);
uint16_t bench_short_stream(uint16_t period_ms);
uint16_t bench_windows(uint16_t period_ms);
uint16_t bench_dither(uint8_t channel, uint16_t amplitude, uint16_t hz);
uint16_t bench_tighten(uint8_t limit, uint32_t value);
uint16_t bench_events_from(uint16_t number);
uint16_t bench_blob_read(uint8_t blob, uint16_t offset, uint8_t count);
uint16_t bench_blob_write(uint8_t blob, uint16_t offset, const uint8_t *bytes, uint8_t count);
uint16_t bench_blob_commit(uint8_t blob, uint16_t length, uint16_t crc);
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
void bench_check_locked(void);

/* Lets the contactor fall after a way to safe, so that the board can be armed again. */
void bench_rest(void);

/* Checks the last event heard. */
void bench_check_event(uint8_t kind, uint8_t reason, int32_t detail);

#endif
