/*
 * The rules that stop an armed board by what it measures: a reading on the wrong side of its limit for longer than the
 * limit's time, or a drive that has run too long.
 */
#ifndef STAND_WATCH_H
#define STAND_WATCH_H

#include <stdbool.h>
#include <stdint.h>

#include "hal.h"
#include "message.h"

enum watch_rule {
    WATCH_AMPS,
    WATCH_PRESSURE,
    WATCH_DEAD_HEAD,
    WATCH_DRY,
    WATCH_VOLTS,
    WATCH_RULES
};

struct watch {
    struct {
        bool holds;     /* the last readings fulfilled the rule */
        uint32_t since; /* board time of the first of them */
    } rules[WATCH_RULES];
    uint32_t run_ms; /* how long some drive has been above 0 since the arming, pauses not counted */
    uint32_t run_ticks; /* of the millisecond that is not full yet */
};

/* What the rules look at, at one moment. */
struct watched {
    const struct description *board;
    uint32_t ticks_per_ms;
    uint32_t now;
    uint32_t first_applied; /* of drive 0 */
    bool driven;            /* some drive is above 0 */
};

struct verdict {
    enum safe_reason reason; /* REASON_NONE: go on */
    int32_t detail;
};

void watch_start(struct watch *watch);

/* Judges the readings of about a millisecond. No reading changes nothing. */
struct verdict watch_readings(struct watch *watch, const struct watched *at, const struct analog_sums *taken);

/* Counts the ticks since the last call as running time, if they were driven. */
struct verdict watch_run_time(struct watch *watch, const struct watched *at, uint32_t ticks);

#endif
