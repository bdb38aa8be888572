/* The inputs, as two readings in a row agree on them. */
#ifndef STAND_INPUTS_H
#define STAND_INPUTS_H

#include <stdbool.h>
#include <stdint.h>

#include "hal.h"

struct inputs {
    uint8_t last;   /* the newest reading */
    uint8_t agreed; /* each bit as two neighbouring readings last agreed on it */
};

/* With two readings at once, so that a host which is quick may arm at once. */
void inputs_start(struct inputs *inputs);

/* Takes a reading, about once a millisecond. */
void inputs_read(struct inputs *inputs);

static inline bool inputs_closed(const struct inputs *inputs, uint8_t wanted) {
    return (inputs->agreed & wanted) == wanted;
}

#endif
