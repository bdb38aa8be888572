/* The HAL over made-up hardware. */
#include <string.h>

#include "analog.h"
#include "bench_line.h"

struct bench_hardware hardware;

static uint32_t analog_taken_at;

void bench_hardware_start(uint32_t ticks) {
    memset(&hardware, 0, sizeof hardware);
    hardware.ticks = ticks;
    hardware.inputs = INPUTS_CLOSED;
    hardware.conversions_per_ms = 2;
    analog_taken_at = ticks;
}

uint32_t hal_ticks(void) {
    return hardware.ticks;
}

/* Rounds to 256 steps like an eight-bit timer, so that applied and wanted duty differ. */
uint32_t hal_drive_set(uint8_t channel, uint32_t duty) {
    hardware.duty[channel] = (duty + 128u) / 256u * 256u;
    return hardware.duty[channel];
}

void hal_contactor_set(bool closed) {
    hardware.contactor = closed;
}

void hal_armed_lamp_set(bool lit) {
    hardware.lamp = lit;
}

uint8_t hal_inputs(void) {
    return hardware.inputs;
}

void hal_meter_read(uint8_t meter, struct meter_reading *reading) {
    *reading = hardware.meters[meter];
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

void hal_watchdog_kick(void) {
    hardware.watchdog_kicks++;
}
