/*
 * The four analogue channels, one after another, as fast as full resolution allows: 104 us each and the
 * interrupt, so a round takes about 450 us.
 * Single conversions, begun by the interrupt of the one before: the channel is then sure, which it is not when the
 * converter runs free. A round is added to the sums as a whole, so all channels have the same count.
 * Between two rounds the self-test may have the converter read its fixed sources.
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
#define SOURCE_BANDGAP 14u
#define SOURCE_GROUND 15u

/* The bandgap settles slowly: its first readings are thrown away. */
#define CHECK_READINGS 12u
#define CHECK_BANDGAP_AT 10u
/* 1.0 to 1.2 V (data sheet) against a supply of 4.5 to 5.5 V, in steps of 1024. */
#define BANDGAP_LEAST 186u
#define BANDGAP_MOST 273u
#define GROUND_MOST 4u

static uint16_t round_readings[ANALOGS_MAX];
static uint8_t channel;
/* One set is added to by the interrupt while the main loop may hold the other, so neither waits for the other. */
static struct analog_sums sums[2];
static volatile uint8_t adding_to;

static volatile uint8_t check_left; /* readings of the check still to come, 0: no check */
static volatile uint8_t check_wanted;
static uint16_t check_bandgap;
static uint16_t check_ground;

void adc_start(void) {
    channel = 0;
    ADMUX = REFERENCE_AVCC;
    DIDR0 = _BV(ADC0D) | _BV(ADC1D) | _BV(ADC2D) | _BV(ADC3D);
    /* 16 MHz / 128 = 125 kHz. */
    ADCSRA = _BV(ADEN) | _BV(ADIE) | _BV(ADPS2) | _BV(ADPS1) | _BV(ADPS0);
    ADCSRA |= _BV(ADSC);
}

static void add_round(void) {
    struct analog_sums *const set = &sums[adding_to];
    const bool first = set->count == 0;
    if (set->count == UINT16_MAX) {
        return;
    }
    set->count++;
    for (uint8_t i = 0; i < ANALOGS_MAX; i++) {
        const uint16_t reading = round_readings[i];
        set->sum[i] += reading;
        if (first || reading < set->min[i]) {
            set->min[i] = reading;
        }
        if (first || reading > set->max[i]) {
            set->max[i] = reading;
        }
    }
}

static void take_check_reading(uint16_t reading) {
    check_left--;
    if (check_left == CHECK_READINGS - CHECK_BANDGAP_AT) {
        check_bandgap = reading;
    } else if (check_left == 0) {
        check_ground = reading;
    }
}

static void take_reading(uint16_t reading) {
    round_readings[channel] = (uint16_t)(reading << LEFT_JUSTIFY);
    channel = (uint8_t)((channel + 1u) % ANALOGS_MAX);
    if (channel != 0) {
        return;
    }
    add_round();
    if (check_wanted) {
        check_wanted = 0;
        check_left = CHECK_READINGS;
    }
}

static uint8_t next_source(void) {
    if (check_left == 0) {
        return channel;
    }
    return check_left > CHECK_READINGS - CHECK_BANDGAP_AT ? SOURCE_BANDGAP : SOURCE_GROUND;
}

/* Others may interrupt this long one, the meters above all. Not itself: the next reading begins last. */
ISR(ADC_vect, ISR_NOBLOCK) {
    const uint16_t reading = ADC;

    if (check_left > 0) {
        take_check_reading(reading);
    } else {
        take_reading(reading);
    }
    ADMUX = (uint8_t)(REFERENCE_AVCC | next_source());
    ADCSRA |= _BV(ADSC);
}

void hal_analog_take(struct analog_sums *taken) {
    const uint8_t taken_from = adding_to;

    adding_to ^= 1u;
    memcpy(taken, &sums[taken_from], sizeof *taken);
    analog_clear(&sums[taken_from]);
}

void adc_check_begin(void) {
    check_wanted = 1;
}

bool adc_check_done(bool *sound) {
    bool running = false;
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        running = check_wanted != 0 || check_left != 0;
    }
    if (running) {
        return false;
    }
    *sound = check_bandgap >= BANDGAP_LEAST && check_bandgap <= BANDGAP_MOST && check_ground <= GROUND_MOST;
    return true;
}
