/*
 * The two meters. The hardware notes the time of meter 0's edges; meter 1's are noted by a pin-change interrupt, so
 * late by its waiting time: a few microseconds, some 20 at worst.
 *
 * Each edge also goes into a small ring for the core's pulse windows. The interrupt puts and the main loop takes, and
 * each index is one byte with one writer, so neither needs a lock.
 */
#include <avr/interrupt.h>
#include <avr/io.h>
#include <util/atomic.h>

#include "hal.h"
#include "parts.h"
#include "pins.h"
#include "ticks.h"

#define RING_SIZE 16u

struct meter {
    uint32_t count;
    uint32_t last_edge;
    struct edge ring[RING_SIZE];
    uint8_t put_at;
    uint8_t take_at;
};

static volatile struct meter meters[BOARD_METERS];
static bool second_was_high;

void meters_start(void) {
    for (uint8_t i = 0; i < BOARD_METERS; i++) {
        meters[i].count = EDGES_AT_START;
    }
    TIMSK1 |= _BV(ICIE1);
    second_was_high = (PINB & _BV(METER_1_PIN)) != 0;
    PCMSK0 = _BV(METER_1_PIN);
    PCICR = _BV(PCIE0);
}

static inline uint8_t after(uint8_t index) {
    return (uint8_t)((index + 1u) % RING_SIZE);
}

static inline __attribute__((always_inline)) void note_edge(volatile struct meter *meter, uint32_t time) {
    const uint32_t count = meter->count + 1u;
    const uint8_t at = meter->put_at;
    const uint8_t next = after(at);

    meter->count = count;
    meter->last_edge = time;
    if (next != meter->take_at) {
        meter->ring[at].time = time;
        meter->ring[at].number = (uint8_t)count;
        meter->put_at = next;
    }
}

ISR(TIMER1_CAPT_vect) {
    note_edge(&meters[PUMP_METER], ticks_extend(ICR1));
}

/*
 * The interrupt comes with both edges; only the falling one alone leaves the pin low after it was high. Where the pin
 * is as it was, a whole pulse or a whole pause passed while the interrupt waited, and that held one rising edge.
 */
ISR(PCINT0_vect) {
    const uint16_t low = TCNT1;
    const bool high = (PINB & _BV(METER_1_PIN)) != 0;

    if (high || !second_was_high) {
        note_edge(&meters[SECOND_METER], ticks_extend(low));
    }
    second_was_high = high;
}

void hal_meter_read(uint8_t meter, struct meter_reading *reading) {
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        reading->count = meters[meter].count;
        reading->last_edge = meters[meter].last_edge;
    }
}

bool hal_edge_first(uint8_t meter, struct edge *edge) {
    const uint8_t at = meters[meter].take_at;
    if (at == meters[meter].put_at) {
        return false;
    }
    edge->time = meters[meter].ring[at].time;
    edge->number = meters[meter].ring[at].number;
    return true;
}

void hal_edge_remove_first(uint8_t meter) {
    meters[meter].take_at = after(meters[meter].take_at);
}
