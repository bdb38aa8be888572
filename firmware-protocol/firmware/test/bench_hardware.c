/* The HAL over made-up hardware. */
#include <string.h>

#include "analog.h"
#include "bench_line.h"
#include "check.h"

#define CONTACTOR_TICKS (10u * TICKS_PER_MS)

struct bench_hardware hardware;

static uint32_t analog_taken_at;
static uint32_t self_test_began;

void bench_hardware_start(uint32_t ticks) {
    memset(&hardware, 0, sizeof hardware);
    hardware.ticks = ticks;
    hardware.contactor_since = ticks - CONTACTOR_TICKS;
    hardware.inputs = INPUTS_WATCHED;
    hardware.feedback = AUTO_FEEDBACK;
    hardware.conversions_per_ms = 2;
    for (unsigned i = 0; i < METERS_MAX; i++) {
        hardware.meters[i].count = EDGES_AT_START;
    }
    analog_taken_at = ticks;
}

void bench_hardware_reset(void) {
    memset(hardware.duty, 0, sizeof hardware.duty);
    hal_contactor_set(false);
    hardware.lamp = false;
}

uint32_t hal_ticks(void) {
    return hardware.ticks;
}

/* Rounds to 256 steps like an eight-bit timer, so that applied and wanted duty differ. */
uint32_t hal_drive_rounded(uint8_t channel, uint32_t duty) {
    (void)channel;
    return (duty + 128u) / 256u * 256u;
}

void hal_drive_set(uint8_t channel, uint32_t duty) {
    CHECK(duty <= DUTY_FULL);
    hardware.duty[channel] = hal_drive_rounded(channel, duty);
}

void hal_contactor_set(bool pulled) {
    if (pulled != hardware.contactor) {
        hardware.contactor = pulled;
        hardware.contactor_since = hardware.ticks;
    }
}

void hal_armed_lamp_set(bool lit) {
    hardware.lamp = lit;
}

static bool feedback_is_closed(void) {
    if (hardware.feedback != AUTO_FEEDBACK) {
        return hardware.feedback != 0;
    }
    const bool moved = hardware.ticks - hardware.contactor_since >= CONTACTOR_TICKS;
    return moved == hardware.contactor;
}

uint8_t hal_inputs(void) {
    return (uint8_t)(hardware.inputs | (feedback_is_closed() ? INPUT_FEEDBACK : 0));
}

void hal_meter_read(uint8_t meter, struct meter_reading *reading) {
    *reading = hardware.meters[meter];
}

void bench_edge_at(uint8_t meter, uint32_t time) {
    struct meter_reading *const reading = &hardware.meters[meter];
    reading->count++;
    reading->last_edge = time;
    if (hardware.edges_waiting[meter] < EDGES_WAITING) {
        struct edge *const edge = &hardware.edges[meter][hardware.edges_waiting[meter]++];
        edge->time = time;
        edge->number = (uint8_t)(reading->count & 0xFFu);
    }
}

void bench_edge(uint8_t meter) {
    bench_edge_at(meter, hardware.ticks);
}

bool hal_edge_first(uint8_t meter, struct edge *edge) {
    *edge = hardware.edges[meter][0];
    return hardware.edges_waiting[meter] > 0;
}

void hal_edge_remove_first(uint8_t meter) {
    hardware.edges_waiting[meter]--;
    memmove(&hardware.edges[meter][0], &hardware.edges[meter][1],
            hardware.edges_waiting[meter] * sizeof hardware.edges[meter][0]);
}

void hal_analog_take(struct analog_sums *taken) {
    const uint32_t ms = (hardware.ticks - analog_taken_at) / TICKS_PER_MS;

    analog_clear(taken);
    analog_taken_at += ms * TICKS_PER_MS;
    taken->count = (uint16_t)(ms * hardware.conversions_per_ms);
    for (uint8_t i = 0; i < ANALOGS_MAX && taken->count > 0; i++) {
        taken->sum[i] = (uint32_t)hardware.analogs[i] * taken->count;
        taken->min[i] = hardware.analogs[i];
        taken->max[i] = hardware.analogs[i];
    }
}

void hal_self_test_begin(void) {
    self_test_began = hardware.ticks;
}

bool hal_self_test_done(struct self_test *result) {
    *result = hardware.self_test;
    return hardware.ticks - self_test_began >= hardware.self_test_ms * TICKS_PER_MS;
}

void hal_watchdog_kick(void) {
    hardware.watchdog_kicks++;
}
