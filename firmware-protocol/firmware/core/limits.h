/* The limits of the board: what a value may be, and which of two is the tighter. */
#ifndef STAND_LIMITS_H
#define STAND_LIMITS_H

#include <stdbool.h>
#include <stdint.h>

#include "description.h"

bool limits_in_range(uint8_t limit, uint32_t value);

/* Takes a value that is tighter than the present one or equal to it; false, and no change, for any other. */
bool limits_tighten(uint32_t limits[LIMITS], uint8_t limit, uint32_t value);

#endif
