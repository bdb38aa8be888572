#include "pulse_meter.h"

#include <string.h>

/* Half a turn of board time: such intervals also keep the sum of a window within 32 bits. */
#define LONGEST_INTERVAL 0x80000000ul

void pulse_meter_start(struct pulse_meter *meter) {
    memset(meter, 0, sizeof *meter);
}

static void begin_window(struct pulse_meter *meter, uint32_t begin, uint32_t reference) {
    memset(&meter->window, 0, sizeof meter->window);
    meter->window.begin = begin;
    meter->window.reference = reference;
    /* 8/5 rounded down and 1/2 rounded up: a whole number of ticks beyond them is beyond the exact fraction. */
    meter->long_above = reference / 5u * 8u + reference % 5u * 8u / 5u;
    meter->short_below = reference / 2u + reference % 2u;
}

void pulse_meter_begin(struct pulse_meter *meter, uint32_t now) {
    begin_window(meter, now, 0);
}

/* Most intervals fit 16 bits, for which a small processor multiplies several times faster. */
static uint64_t product(uint32_t first, uint32_t second) {
    if ((first | second) <= UINT16_MAX) {
        return (uint32_t)(uint16_t)first * (uint16_t)second;
    }
    return (uint64_t)first * second;
}

static void count_up(uint16_t *count, uint16_t by) {
    *count = (uint16_t)(*count > UINT16_MAX - by ? UINT16_MAX : *count + by);
}

static void take_interval(struct pulse_meter *meter, uint32_t interval) {
    struct pulse_window *const window = &meter->window;

    if (window->intervals == 0 || interval < window->least) {
        window->least = interval;
    }
    if (interval > window->most) {
        window->most = interval;
    }
    window->intervals++;
    window->sum += interval;
    window->squares += product(interval, interval);
    if (meter->knows_interval) {
        window->lagged += product(interval, meter->interval);
    }
    if (window->reference != 0) {
        window->long_ones = (uint16_t)(window->long_ones + (interval > meter->long_above ? 1u : 0u));
        window->short_ones = (uint16_t)(window->short_ones + (interval < meter->short_below ? 1u : 0u));
    }
}

void pulse_meter_take(struct pulse_meter *meter, const struct edge *edge) {
    struct pulse_window *const window = &meter->window;
    const uint8_t ahead = (uint8_t)(edge->number - meter->number);
    const bool follows = meter->knows_edge && ahead == 1u;
    const uint32_t interval = edge->time - meter->edge;

    if (window->edges == 0) {
        window->first_edge = edge->time;
    }
    window->last_edge = edge->time;
    count_up(&window->edges, meter->knows_edge ? ahead : 1u);
    if (follows && window->intervals < UINT16_MAX) {
        take_interval(meter, interval);
    }
    meter->knows_interval = follows;
    meter->interval = interval;
    meter->knows_edge = true;
    meter->number = edge->number;
    meter->edge = edge->time;
}

void pulse_meter_close(struct pulse_meter *meter, uint32_t end, struct pulse_window *closed) {
    meter->window.end = end;
    *closed = meter->window;
    begin_window(meter, end, closed->intervals == 0 ? 0 : closed->sum / closed->intervals);
}

void pulse_meter_age(struct pulse_meter *meter, uint32_t now) {
    const uint32_t age = now - meter->edge;
    /* An edge may be a little younger than `now`. */
    if (meter->knows_edge && age >= LONGEST_INTERVAL && age < 0xF0000000ul) {
        meter->knows_edge = false;
        meter->knows_interval = false;
    }
}
