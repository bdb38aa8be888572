#include "limits.h"

#define LINK_MIN_MS 100u

static uint32_t highest(uint8_t limit) {
    switch (limit) {
        case LIMIT_AMPS_MS:
        case LIMIT_PRESSURE_MS:
        case LIMIT_VOLTS_MS:
        case LIMIT_LINK_MS:
            return 1000;
        case LIMIT_DEAD_HEAD_MS:
        case LIMIT_DRY_MS:
            return 60000;
        case LIMIT_RUN_MS:
            return 7200000;
        default:
            return 65535;
    }
}

bool limits_in_range(uint8_t limit, uint32_t value) {
    return value <= highest(limit) && (limit != LIMIT_LINK_MS || value >= LINK_MIN_MS);
}

bool limits_tighten(uint32_t limits[LIMITS], uint8_t limit, uint32_t value) {
    /* The amps below which a pump runs dry are the one limit that watches from below. */
    const bool widens = limit == LIMIT_DRY_AMPS ? value < limits[limit] : value > limits[limit];
    if (!widens) {
        limits[limit] = value;
    }
    return !widens;
}
