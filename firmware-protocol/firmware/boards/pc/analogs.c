/*
 * The analogue channels of the toy hardware: a battery of 13.8 V on a channel of 20 V full scale, 10 A at full duty on a
 * channel of 40 A, a quarter of full scale for pressure and temperature; or as a command says.
 */
#include "analog.h"
#include "hal.h"
#include "parts.h"

#define FULL_SCALE 65536.0
#define VOLTS_OF_FULL_SCALE (13.8 / 20.0)
#define AMPS_OF_FULL_SCALE (10.0 / 40.0)
#define STEADY_OF_FULL_SCALE 0.25
/* As often as the ATmega328P board reads its four channels. */
#define CONVERSIONS_PER_TICK (1.0 / 832.0)

static long forced[ANALOGS_MAX] = {AS_USUAL, AS_USUAL, AS_USUAL, AS_USUAL};
static bool stopped;
static uint64_t run_to; /* how far the converter has run */
static double conversions_owed;

void analogs_start(void) {
    run_to = clock_run_ticks();
    conversions_owed = 0;
}

void analogs_force(uint8_t channel, long code) {
    forced[channel] = code;
}

void analogs_run(bool runs) {
    stopped = !runs;
}

static uint16_t reading_of(uint8_t channel) {
    const double of_full_scale[ANALOGS_MAX] = {VOLTS_OF_FULL_SCALE, AMPS_OF_FULL_SCALE * outputs_pump_duty(),
                                               STEADY_OF_FULL_SCALE, STEADY_OF_FULL_SCALE};
    if (forced[channel] != AS_USUAL) {
        return (uint16_t)forced[channel];
    }
    return (uint16_t)(of_full_scale[channel] * FULL_SCALE);
}

void hal_analog_take(struct analog_sums *taken) {
    const uint64_t now = clock_run_ticks();

    analog_clear(taken);
    if (stopped) {
        run_to = now;
        return;
    }
    conversions_owed += (double)(now - run_to) * CONVERSIONS_PER_TICK;
    run_to = now;
    if (conversions_owed > UINT16_MAX) {
        conversions_owed = UINT16_MAX;
    }
    taken->count = (uint16_t)conversions_owed;
    conversions_owed -= taken->count;
    for (uint8_t i = 0; i < ANALOGS_MAX; i++) {
        const uint16_t reading = reading_of(i);
        taken->sum[i] = (uint32_t)reading * taken->count;
        taken->min[i] = reading;
        taken->max[i] = reading;
    }
}
