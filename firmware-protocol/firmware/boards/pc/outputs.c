/* Drives, contactor and lamp of the toy hardware. */
#include <string.h>

#include "hal.h"
#include "parts.h"

static uint32_t duties[DRIVES_MAX];
static bool pulled;
static uint64_t pulled_since;

void outputs_start(void) {
    memset(duties, 0, sizeof duties);
    pulled = false;
    pulled_since = 0;
}

double outputs_pump_duty(void) {
    return (double)duties[0] / (double)DUTY_FULL;
}

uint64_t outputs_contactor_since(void) {
    return pulled_since;
}

bool outputs_contactor_pulled(void) {
    return pulled;
}

uint32_t hal_drive_rounded(uint8_t channel, uint32_t duty) {
    (void)channel;
    return duty;
}

void hal_drive_set(uint8_t channel, uint32_t duty) {
    if (duty != duties[channel]) {
        meters_run();
        duties[channel] = duty;
    }
}

void hal_contactor_set(bool now_pulled) {
    if (now_pulled != pulled) {
        pulled = now_pulled;
        pulled_since = clock_run_ticks();
    }
}

void hal_armed_lamp_set(bool lit) {
    (void)lit;
}
