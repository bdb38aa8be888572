/*
 * What a board must offer to the core. Each board directory implements these functions; the tests have an own set.
 * All of them are called from one thread of control (the main loop), never from an interrupt.
 */
#ifndef STAND_HAL_H
#define STAND_HAL_H

#include <stdbool.h>
#include <stdint.h>

#include "description.h"

#define DUTY_FULL 65536ul
/* Every end meets a roll-over within seconds of its first day: time and counts begin here after every reset. */
#define TICKS_AT_START 0xFF800000ul
#define EDGES_AT_START 0xFFFFFF00ul

/* 1 is closed. An input that is open or not wired reads 0. */
enum input_bit {
    INPUT_EMERGENCY_STOP = 1,
    INPUT_GUARD = 2,
    INPUT_LEVEL = 4,
    INPUT_OVERRIDE = 8, /* the unit's mechanical override is returned */
    INPUT_FEEDBACK = 16, /* the contactor's auxiliary contact */
    INPUTS_WATCHED = 15  /* those that must be closed to arm */
};

/* Readings of the analogue channels since they were last taken. Every channel has been read `count` times. */
struct analog_sums {
    uint16_t count;
    uint32_t sum[ANALOGS_MAX]; /* left-justified readings; the core takes them once a millisecond */
    uint16_t min[ANALOGS_MAX];
    uint16_t max[ANALOGS_MAX];
};

struct meter_reading {
    uint32_t count;     /* edges, from EDGES_AT_START on */
    uint32_t last_edge; /* board time of the last edge counted, 0 before the first */
};

/* One edge of a meter. `number` is the low byte of the meter's count with this edge, so a lost one leaves a gap. */
struct edge {
    uint32_t time;
    uint8_t number;
};

/* Board time, description.tick_hz per second, from TICKS_AT_START on, free running over 32 bits. */
uint32_t hal_ticks(void);

/* The duty (0 .. DUTY_FULL) that the pin would truly get, after the rounding of the hardware. 0 stays 0. */
uint32_t hal_drive_rounded(uint8_t channel, uint32_t duty);

/* Puts a duty (0 .. DUTY_FULL) on a drive pin at once. The core lays dither over it by calling this at each turn. */
void hal_drive_set(uint8_t channel, uint32_t duty);

void hal_contactor_set(bool pulled);
void hal_armed_lamp_set(bool lit);

/* INPUT_... bits as they are at this moment; the core reads them once a millisecond and compares readings. */
uint8_t hal_inputs(void);

/* Edge count and time of the last edge, of one and the same moment. */
void hal_meter_read(uint8_t meter, struct meter_reading *reading);

/*
 * The oldest edge that waits in the meter's ring, which the interrupt fills; false when none does. A full ring drops
 * the newest edge. The core empties the ring in every poll, whether it is asked for pulse windows or not.
 */
bool hal_edge_first(uint8_t meter, struct edge *edge);
void hal_edge_remove_first(uint8_t meter);

/*
 * Hands over the readings since the last call and begins anew. `count` must be what the converter has truly finished: when
 * it stays 0 for 50 ms while the board is proving or armed, the core takes the converter for broken and locks the board.
 */
void hal_analog_take(struct analog_sums *taken);

/* Takes one received byte; false when there is none. */
bool hal_rx_take(uint8_t *byte);

/* Room in the transmit ring, in bytes; 250 at least when it is empty. It never shrinks but by hal_tx_put. */
uint16_t hal_tx_room(void);

/* Puts bytes into the transmit ring. The caller has asked for room. Never waits. */
void hal_tx_put(const uint8_t *bytes, uint16_t length);

/*
 * STORE_BYTES bytes that survive a power cut, addressed from 0; a blank one reads FFh. hal_store_write begins the
 * writing of one byte and returns at once; it is called only while hal_store_busy is false. hal_store_read may wait
 * for the byte under way. A power cut may leave that one byte with any value, and no other.
 */
#define STORE_BYTES 786u
bool hal_store_busy(void);
void hal_store_write(uint16_t at, uint8_t byte);
uint8_t hal_store_read(uint16_t at);

/* Bits of the self-test. A board tries those that it can of program memory, working memory, converter and clock. */
enum self_test_bit {
    TEST_PROGRAM_MEMORY = 1,
    TEST_WORKING_MEMORY = 2,
    TEST_BLOBS = 4, /* the core's */
    TEST_CONVERTER = 8,
    TEST_FEEDBACK = 16, /* the core's */
    TEST_CLOCK = 32
};

struct self_test {
    uint16_t tried;
    uint16_t failed;
};

/* Begins the board's part of the self-test; outputs are safe and stay so until it is done. */
void hal_self_test_begin(void);

/* Goes on with it for 2 ms at most. True when it is done, within 400 ms of the begin; the result is then filled in. */
bool hal_self_test_done(struct self_test *result);

/* Called once a millisecond while the core is well. */
void hal_watchdog_kick(void);

#endif
