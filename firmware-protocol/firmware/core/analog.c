#include "analog.h"

#include <string.h>

void analog_clear(struct analog_sums *window) {
    memset(window, 0, sizeof *window);
}

void analog_join(struct analog_sums *window, const struct analog_sums *taken) {
    if (taken->count == 0 || taken->count > UINT16_MAX - window->count) {
        return;
    }
    const bool first = window->count == 0;
    window->count = (uint16_t)(window->count + taken->count);
    for (uint8_t i = 0; i < ANALOGS_MAX; i++) {
        window->sum[i] += taken->sum[i];
        if (first || taken->min[i] < window->min[i]) {
            window->min[i] = taken->min[i];
        }
        if (first || taken->max[i] > window->max[i]) {
            window->max[i] = taken->max[i];
        }
    }
}

/* Rounded to nearest; with at most 65535 readings of at most 65535 the sum and its rounding fit 32 bits. */
uint16_t analog_mean(const struct analog_sums *window, uint8_t channel) {
    return (uint16_t)((window->sum[channel] + window->count / 2u) / window->count);
}

void analog_read(const struct analog_sums *window, struct analog_reading readings[ANALOGS_MAX]) {
    for (uint8_t i = 0; i < ANALOGS_MAX; i++) {
        readings[i].mean = analog_mean(window, i);
        readings[i].min = window->min[i];
        readings[i].max = window->max[i];
    }
}
