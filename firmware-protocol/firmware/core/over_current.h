/* The over-current rule: the current channel stayed above its limit for its time. */
#ifndef STAND_OVER_CURRENT_H
#define STAND_OVER_CURRENT_H

#include <stdbool.h>
#include <stdint.h>

#include "hal.h"

struct over_current {
    bool above;       /* the last readings were above the limit */
    uint32_t since;   /* board time of the first of them */
    uint16_t highest; /* highest mean since then */
};

void over_current_clear(struct over_current *watch);

/* Judges the readings of about a millisecond. True when the limit's time is over. No reading changes nothing. */
bool over_current_watch(struct over_current *watch, const struct identity *limits, const struct analog_sums *taken,
                        uint32_t now);

#endif
