/*
 * Toy hardware in real time: a meter of 250 Hz at full duty, a battery of 13.8 V on a channel of 20 V full scale,
 * 10 A at full duty on a channel of 40 A full scale, and closed inputs.
 */
#include <string.h>
#include <time.h>

#include "analog.h"
#include "hal.h"
#include "parts.h"

#define METER_HZ_AT_FULL 250.0
#define FULL_SCALE 65536.0
#define VOLTS_OF_FULL_SCALE (13.8 / 20.0)
#define AMPS_OF_FULL_SCALE (10.0 / 40.0)
#define STEADY_OF_FULL_SCALE 0.25
/* As often as the ATmega328P board reads its four channels. */
#define CONVERSIONS_PER_TICK (1.0 / 832.0)

static struct timespec began;
static double duty;
static struct meter_reading meter;
static double meter_phase;      /* part of the way to the next edge */
static uint64_t meter_ticks;    /* how far the meter has run */
static uint64_t analog_ticks;   /* how far the converter has run */
static double conversions_owed;

void hardware_start(void) {
    clock_gettime(CLOCK_MONOTONIC, &began);
}

static uint64_t ticks_since_start(void) {
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    const int64_t seconds = (int64_t)now.tv_sec - (int64_t)began.tv_sec;
    const int64_t nanoseconds = (int64_t)now.tv_nsec - (int64_t)began.tv_nsec;
    return (uint64_t)(seconds * (int64_t)TICK_HZ + nanoseconds / 500);
}

uint32_t hal_ticks(void) {
    return (uint32_t)ticks_since_start();
}

static void run_meter(void) {
    const uint64_t now = ticks_since_start();
    const double edges_per_tick = METER_HZ_AT_FULL * duty / (double)TICK_HZ;
    const double reached = meter_phase + (double)(now - meter_ticks) * edges_per_tick;

    for (double edge = 1.0; edge <= reached; edge += 1.0) {
        meter.count++;
        meter.last_edge = (uint32_t)(meter_ticks + (uint64_t)((edge - meter_phase) / edges_per_tick));
    }
    meter_phase = reached - (double)(uint64_t)reached;
    meter_ticks = now;
}

uint32_t hal_drive_set(uint8_t channel, uint32_t new_duty) {
    (void)channel;
    run_meter();
    duty = (double)new_duty / FULL_SCALE;
    return new_duty;
}

void hal_contactor_set(bool closed) {
    (void)closed;
}

void hal_armed_lamp_set(bool lit) {
    (void)lit;
}

uint8_t hal_inputs(void) {
    return INPUTS_CLOSED;
}

void hal_meter_read(uint8_t number, struct meter_reading *reading) {
    (void)number;
    run_meter();
    *reading = meter;
}

void hal_analog_take(struct analog_sums *taken) {
    const double of_full_scale[ANALOGS_MAX] = {VOLTS_OF_FULL_SCALE, AMPS_OF_FULL_SCALE * duty, STEADY_OF_FULL_SCALE,
                                               STEADY_OF_FULL_SCALE};
    const uint64_t now = ticks_since_start();

    analog_clear(taken);
    conversions_owed += (double)(now - analog_ticks) * CONVERSIONS_PER_TICK;
    analog_ticks = now;
    if (conversions_owed > UINT16_MAX) {
        conversions_owed = UINT16_MAX;
    }
    taken->count = (uint16_t)conversions_owed;
    conversions_owed -= taken->count;
    for (uint8_t i = 0; i < ANALOGS_MAX; i++) {
        const uint16_t reading = (uint16_t)(of_full_scale[i] * FULL_SCALE);
        taken->sum[i] = (uint32_t)reading * taken->count;
        taken->min[i] = reading;
        taken->max[i] = reading;
    }
}

void hal_watchdog_kick(void) {
}
