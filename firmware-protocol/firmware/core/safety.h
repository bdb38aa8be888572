/* The states safe and armed: every way into safe is here, and none of them asks the host. */
#ifndef STAND_SAFETY_H
#define STAND_SAFETY_H

#include <stdint.h>

#include "board.h"

/* After reset: outputs safe, first event. */
void safety_start(struct board *board);

/* Safe to armed. The caller has checked boot id, inputs and the room for events. */
void safety_arm(struct board *board, uint32_t now);

/* Outputs safe at once; an event when the board was armed. */
void safety_make_safe(struct board *board, enum safe_reason reason, int32_t detail, uint32_t now);

/* Inputs and link, on every poll. */
void safety_watch(struct board *board, uint32_t now);

/* The over-current rule, on every set of readings. */
void safety_watch_current(struct board *board, const struct analog_sums *taken, uint32_t now);

#endif
