/*
 * Board time and meter 0. Timer1 runs free at 0.5 us; its overflows extend it and its captures to 32 bits.
 *
 * The capture interrupt has priority over the overflow interrupt, so in either place the overflow flag may be set
 * while the high half still lacks it. A low half that is small then belongs to the new high half, a large one to the
 * old: right as long as interrupts are served within half a turn, 16 ms.
 */
#include <avr/interrupt.h>
#include <avr/io.h>
#include <util/atomic.h>

#include "hal.h"
#include "parts.h"
#include "pins.h"

#define HALF_TURN 0x8000u

static volatile uint16_t turns;
static volatile uint32_t edge_count;
static volatile uint32_t edge_last;

void clock_start(void) {
    TCCR1A = 0;
    TCNT1 = 0;
    /* Noise canceller, rising edge, clock / 8. */
    TCCR1B = _BV(ICNC1) | _BV(ICES1) | _BV(CS11);
    TIMSK1 = _BV(ICIE1) | _BV(TOIE1);
}

/* Interrupts must be off. */
static uint32_t extend(uint16_t low) {
    uint16_t high = turns;
    if ((TIFR1 & _BV(TOV1)) != 0 && low < HALF_TURN) {
        high++;
    }
    return ((uint32_t)high << 16) | low;
}

ISR(TIMER1_OVF_vect) {
    turns++;
}

ISR(TIMER1_CAPT_vect) {
    edge_last = extend(ICR1);
    edge_count++;
}

uint32_t hal_ticks(void) {
    uint32_t now = 0;
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        now = extend(TCNT1);
    }
    return now;
}

void hal_meter_read(uint8_t meter, struct meter_reading *reading) {
    (void)meter;
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        reading->count = edge_count;
        reading->last_edge = edge_last;
    }
}
