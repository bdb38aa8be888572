#include "over_current.h"

#include "analog.h"

void over_current_clear(struct over_current *watch) {
    watch->above = false;
    watch->since = 0;
    watch->highest = 0;
}

bool over_current_watch(struct over_current *watch, const struct identity *limits, const struct analog_sums *taken,
                        uint32_t now) {
    if (limits->current_channel >= limits->analogs || taken->count == 0) {
        return false;
    }
    const uint16_t mean = analog_mean(taken, limits->current_channel);
    if (mean <= limits->over_current_limit) {
        over_current_clear(watch);
        return false;
    }
    if (!watch->above) {
        watch->above = true;
        watch->since = now;
    }
    if (mean > watch->highest) {
        watch->highest = mean;
    }
    return now - watch->since >= limits->over_current_ms * (limits->tick_hz / 1000u);
}
