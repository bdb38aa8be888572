/*
 * The four analogue channels, one after another, as fast as full resolution allows: 104 us each and the
 * interrupt, so a round takes about 430 us.
 * Single conversions, begun by the interrupt of the one before: the channel is then sure, which it is not when the
 * converter runs free. A round is added to the sums as a whole, so all channels have the same count.
 */
#include <avr/interrupt.h>
#include <avr/io.h>
#include <string.h>
#include <util/atomic.h>

#include "analog.h"
#include "hal.h"
#include "parts.h"

#define LEFT_JUSTIFY 6u
#define REFERENCE_AVCC _BV(REFS0)

static uint16_t round_readings[ANALOGS_MAX];
static uint8_t channel;
static struct analog_sums sums;

void adc_start(void) {
    channel = 0;
    ADMUX = REFERENCE_AVCC;
    DIDR0 = _BV(ADC0D) | _BV(ADC1D) | _BV(ADC2D) | _BV(ADC3D);
    /* 16 MHz / 128 = 125 kHz. */
    ADCSRA = _BV(ADEN) | _BV(ADIE) | _BV(ADPS2) | _BV(ADPS1) | _BV(ADPS0);
    ADCSRA |= _BV(ADSC);
}

static void add_round(void) {
    const bool first = sums.count == 0;
    if (sums.count == UINT16_MAX) {
        return;
    }
    sums.count++;
    for (uint8_t i = 0; i < ANALOGS_MAX; i++) {
        const uint16_t reading = round_readings[i];
        sums.sum[i] += reading;
        if (first || reading < sums.min[i]) {
            sums.min[i] = reading;
        }
        if (first || reading > sums.max[i]) {
            sums.max[i] = reading;
        }
    }
}

ISR(ADC_vect) {
    round_readings[channel] = (uint16_t)(ADC << LEFT_JUSTIFY);
    channel = (uint8_t)((channel + 1u) % ANALOGS_MAX);
    ADMUX = REFERENCE_AVCC | channel;
    ADCSRA |= _BV(ADSC);
    if (channel == 0) {
        add_round();
    }
}

void hal_analog_take(struct analog_sums *taken) {
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        memcpy(taken, &sums, sizeof *taken);
        analog_clear(&sums);
    }
}
