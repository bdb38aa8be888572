/*
 * Board time. Timer1 runs free at 0.5 us; its overflows extend it to 32 bits.
 *
 * Other interrupts may be served before the overflow's, so the overflow flag may be set while the high half still lacks
 * it. A low half that is small then belongs to the new high half, a large one to the old: right as long as interrupts
 * are served within half a turn, 16 ms.
 */
#ifndef STAND_AVR328_TICKS_H
#define STAND_AVR328_TICKS_H

#include <avr/io.h>
#include <stdint.h>

#define HALF_TURN 0x8000u

extern volatile uint16_t ticks_turns;

/* Interrupts must be off. */
static inline uint32_t ticks_extend(uint16_t low) {
    uint16_t high = ticks_turns;
    if ((TIFR1 & _BV(TOV1)) != 0 && low < HALF_TURN) {
        high++;
    }
    return ((uint32_t)high << 16) | low;
}

#endif
