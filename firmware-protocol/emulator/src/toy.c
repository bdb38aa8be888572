/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "toy.h"

#include <stddef.h>
#include <stdlib.h>
#include <string.h>

#include "chip.h"
#include "meters.h"

#define LEFT_JUSTIFIED 64u
#define CODE_MOST 65535.0
#define HZ_MOST 20000.0

enum { VOLTS, AMPS, PRESSURE, TEMPERATURE };

#define STEADY_VOLTS 45219u       /* 13.8 V of 20 V */
#define FULL_AMPS 16384.0         /* 10 A of 40 A at full duty */
#define STEADY_PRESSURE 19661u    /* three tenths */
#define STEADY_TEMPERATURE 13107u /* two tenths */
#define HZ_AT_FULL 250.0
/* The second meter turns at half the speed of the first. */
static const double meter_share[METERS] = {1.0, 0.5};

static uint8_t closed = LOOPS_ALL;
static uint16_t volts = STEADY_VOLTS;
static uint16_t pressure = STEADY_PRESSURE;
static uint16_t amps;
static bool amps_fixed;
static double hz;
static bool hz_fixed;
static double phase[METERS]; /* part of the way to the next edge */

static const struct {
    const char *word;
    uint8_t loop;
} loops[] = {
    {"estop", LOOP_EMERGENCY_STOP}, {"guard", LOOP_GUARD}, {"level", LOOP_LEVEL}, {"override", LOOP_OVERRIDE}};

static void run_meter(unsigned meter, double edges_per_us, double exchange_us) {
    const uint64_t began = chip_now();
    const double until = phase[meter] + edges_per_us * exchange_us;
    for (double edge = 1.0; edge <= until; edge += 1.0) {
        chip_add_edge(meter, began + (uint64_t)((edge - phase[meter]) / edges_per_us * CYCLES_PER_US));
    }
    phase[meter] = until - (double)(uint64_t)until;
}

void toy_exchange(double exchange_us) {
    const double duty = chip_get_outputs().duty[0] / 65536.0;
    const uint16_t amps_now = amps_fixed ? amps : (uint16_t)(FULL_AMPS * duty);
    const double hz_now = hz_fixed ? hz : HZ_AT_FULL * duty;
    struct chip_inputs inputs;

    inputs.codes[VOLTS] = volts / LEFT_JUSTIFIED;
    inputs.codes[AMPS] = amps_now / LEFT_JUSTIFIED;
    inputs.codes[PRESSURE] = pressure / LEFT_JUSTIFIED;
    inputs.codes[TEMPERATURE] = STEADY_TEMPERATURE / LEFT_JUSTIFIED;
    inputs.closed = closed;
    chip_set_inputs(&inputs);
    for (unsigned i = 0; i < METERS; i++) {
        run_meter(i, hz_now * meter_share[i] * 1e-6, exchange_us);
    }
}

static bool read_value(const char *text, double most, double *value) {
    char *end;
    *value = strtod(text, &end);
    return end != text && *end == '\0' && *value >= 0.0 && *value <= most;
}

static bool loop_command(const char *word, double value) {
    for (size_t i = 0; i < sizeof loops / sizeof *loops; i++) {
        if (strcmp(word, loops[i].word) == 0 && (value == 0.0 || value == 1.0)) {
            closed = (uint8_t)(value > 0.0 ? closed | loops[i].loop : closed & ~loops[i].loop);
            return true;
        }
    }
    return false;
}

static bool meter_command(const char *text) {
    double value;
    if (strcmp(text, "auto") == 0) {
        hz_fixed = false;
        return true;
    }
    if (!read_value(text, HZ_MOST, &value)) {
        return false;
    }
    hz = value;
    hz_fixed = true;
    return true;
}

bool toy_command(const char *word, const char *text) {
    double value;
    if (strcmp(word, "meter-hz") == 0) {
        return meter_command(text);
    }
    if (!read_value(text, CODE_MOST, &value)) {
        return false;
    }
    if (strcmp(word, "amps-code") == 0) {
        amps = (uint16_t)value;
        amps_fixed = true;
    } else if (strcmp(word, "pressure-code") == 0) {
        pressure = (uint16_t)value;
    } else if (strcmp(word, "volts-code") == 0) {
        volts = (uint16_t)value;
    } else {
        return loop_command(word, value);
    }
    return true;
}
