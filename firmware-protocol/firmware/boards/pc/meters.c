/*
 * The meters of the toy hardware: 250 Hz on meter 0 and half of it on meter 1 at full duty, or as a command says. They
 * are run up to the present whenever somebody looks.
 */
#include <string.h>

#include "hal.h"
#include "parts.h"

#define METER_HZ_AT_FULL 250.0
#define EDGES_WAITING 64u

struct toy_meter {
    struct meter_reading reading;
    double phase; /* part of the way to the next edge */
    struct edge edges[EDGES_WAITING];
    unsigned first;
    unsigned waiting;
};

static struct toy_meter meters[METERS_MAX];
static uint64_t run_to; /* how far the meters have run */
static double forced_hz = AS_USUAL;

void meters_start(void) {
    memset(meters, 0, sizeof meters);
    for (unsigned i = 0; i < METERS_MAX; i++) {
        meters[i].reading.count = EDGES_AT_START;
    }
    run_to = clock_run_ticks();
}

void meters_force(double hz) {
    meters_run();
    forced_hz = hz;
}

static void add_edge(struct toy_meter *meter, uint64_t at) {
    meter->reading.count++;
    meter->reading.last_edge = (uint32_t)(TICKS_AT_START + at);
    if (meter->waiting < EDGES_WAITING) {
        struct edge *const edge = &meter->edges[(meter->first + meter->waiting++) % EDGES_WAITING];
        edge->time = meter->reading.last_edge;
        edge->number = (uint8_t)(meter->reading.count & 0xFFu);
    }
}

static void run(struct toy_meter *meter, double hz, uint64_t now) {
    const double edges_per_tick = hz / (double)TICK_HZ;
    const double reached = meter->phase + (double)(now - run_to) * edges_per_tick;

    for (double edge = 1.0; edge <= reached; edge += 1.0) {
        add_edge(meter, run_to + (uint64_t)((edge - meter->phase) / edges_per_tick));
    }
    meter->phase = reached - (double)(uint64_t)reached;
}

void meters_run(void) {
    const uint64_t now = clock_run_ticks();
    const double hz = forced_hz >= 0 ? forced_hz : METER_HZ_AT_FULL * outputs_pump_duty();

    run(&meters[0], hz, now);
    run(&meters[1], hz / 2.0, now);
    run_to = now;
}

void hal_meter_read(uint8_t number, struct meter_reading *reading) {
    meters_run();
    *reading = meters[number].reading;
}

bool hal_edge_first(uint8_t number, struct edge *edge) {
    struct toy_meter *const meter = &meters[number];
    if (meter->waiting == 0) {
        meters_run();
    }
    if (meter->waiting == 0) {
        return false;
    }
    *edge = meter->edges[meter->first];
    return true;
}

void hal_edge_remove_first(uint8_t number) {
    struct toy_meter *const meter = &meters[number];
    meter->first = (meter->first + 1u) % EDGES_WAITING;
    meter->waiting--;
}
