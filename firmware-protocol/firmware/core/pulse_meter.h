/* Statistics of the times between a meter's edges, window by window. No division but one per window. */
#ifndef STAND_PULSE_METER_H
#define STAND_PULSE_METER_H

#include <stdbool.h>
#include <stdint.h>

#include "message.h"

struct pulse_meter {
    struct pulse_window window;
    uint32_t long_above;  /* an interval above this is a long one */
    uint32_t short_below; /* one below this a short one */
    bool knows_edge;      /* the edge before is known, so the next one ends an interval */
    bool knows_interval;
    uint8_t number; /* of the edge before */
    uint32_t edge;  /* its time */
    uint32_t interval;
};

void pulse_meter_start(struct pulse_meter *meter);

/* Begins windows anew, without a reference. */
void pulse_meter_begin(struct pulse_meter *meter, uint32_t now);

/* Takes an edge into the window. One whose number does not follow has no known edge before it. */
void pulse_meter_take(struct pulse_meter *meter, const struct edge *edge);

/* Ends the window at this board time and hands it over; the next begins there, with its mean as the reference. */
void pulse_meter_close(struct pulse_meter *meter, uint32_t end, struct pulse_window *closed);

/* Forgets an edge so long ago that its time could be mistaken for another; at least every 1000 s. */
void pulse_meter_age(struct pulse_meter *meter, uint32_t now);

#endif
