/*
 * The states safe, proving, armed and locked: every way between them is here, and none into safe asks the host.
 */
#ifndef STAND_SAFETY_H
#define STAND_SAFETY_H

#include <stdint.h>

#include "board.h"

/* Events that may follow an arming: armed, made safe, locked. */
#define EVENTS_OF_ONE_ARMING 3u

/* After reset: outputs safe, first event. */
void safety_start(struct board *board);

/* Safe to proving. The caller has checked boot id, inputs, feedback and the room for events. */
void safety_arm(struct board *board, uint32_t now);

/* Outputs safe at once; an event when the board was proving or armed. */
void safety_make_safe(struct board *board, enum safe_reason reason, int32_t detail, uint32_t now);

/* To locked, for these failed bits; from proving and armed the outputs are made safe at once. */
void safety_lock(struct board *board, uint16_t failed, uint32_t now);

/* The link, in every poll. */
void safety_watch_link(struct board *board, uint32_t now);

/* Inputs, contactor and running time, once a millisecond; `ticks` since the last time. */
void safety_watch_inputs(struct board *board, uint32_t now, uint32_t ticks);

/* The rules about readings, on every set of them; an empty set too, which is how a converter stands still. */
void safety_watch_readings(struct board *board, const struct analog_sums *taken, uint32_t now);

#endif
