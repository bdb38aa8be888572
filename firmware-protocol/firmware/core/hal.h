/*
 * What a board must offer to the core. Each board directory implements these functions; the tests have an own set.
 * All of them are called from one thread of control (the main loop), never from an interrupt.
 */
#ifndef STAND_HAL_H
#define STAND_HAL_H

#include <stdbool.h>
#include <stdint.h>

#include "message.h"

/* Readings of the analogue channels since they were last taken. Every channel has been read `count` times. */
struct analog_sums {
    uint16_t count;
    uint32_t sum[ANALOGS_MAX]; /* left-justified readings; the core takes them once a millisecond */
    uint16_t min[ANALOGS_MAX];
    uint16_t max[ANALOGS_MAX];
};

/* Board time, identity.tick_hz per second, free running over 32 bits. */
uint32_t hal_ticks(void);

/* Puts a duty (0 .. DUTY_FULL) on a drive pin at once. Returns the duty that the pin truly gets, after rounding. */
uint32_t hal_drive_set(uint8_t channel, uint32_t duty);

void hal_contactor_set(bool closed);
void hal_armed_lamp_set(bool lit);

/* INPUT_... bits, set where the loop is closed. An input that is not wired reads open. */
uint8_t hal_inputs(void);

/* Edge count and time of the last edge, of one and the same moment. */
void hal_meter_read(uint8_t meter, struct meter_reading *reading);

/* Hands over the readings since the last call and begins anew. */
void hal_analog_take(struct analog_sums *taken);

/* Takes one received byte; false when there is none. */
bool hal_rx_take(uint8_t *byte);

/* Room in the transmit ring, in bytes. It never shrinks but by hal_tx_put. */
uint16_t hal_tx_room(void);

/* Puts bytes into the transmit ring. The caller has asked for room. Never waits. */
void hal_tx_put(const uint8_t *bytes, uint16_t length);

/* Called once a millisecond while the core is well. */
void hal_watchdog_kick(void);

#endif
