/* Board time: Timer1 and its overflows. The input capture of the same timer is meter 0's. */
#include <avr/interrupt.h>
#include <avr/io.h>
#include <util/atomic.h>

#include "hal.h"
#include "parts.h"
#include "ticks.h"

volatile uint16_t ticks_turns;

void clock_start(void) {
    ticks_turns = (uint16_t)(TICKS_AT_START >> 16);
    TCCR1A = 0;
    TCNT1 = (uint16_t)(TICKS_AT_START & 0xFFFFu);
    /* Noise canceller, rising edge, clock / 8. */
    TCCR1B = _BV(ICNC1) | _BV(ICES1) | _BV(CS11);
    TIMSK1 |= _BV(TOIE1);
}

ISR(TIMER1_OVF_vect) {
    ticks_turns++;
}

uint32_t hal_ticks(void) {
    uint32_t now = 0;
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        now = ticks_extend(TCNT1);
    }
    return now;
}
