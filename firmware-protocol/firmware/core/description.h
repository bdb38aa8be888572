/*
 * What a board is and how far it may go. Its main fills this in anew before each start of the core, which then reads it
 * and, when a host tightens one, changes the limits in place: so a reset brings back the board's own.
 */
#ifndef STAND_DESCRIPTION_H
#define STAND_DESCRIPTION_H

#include <stdint.h>

#define DRIVES_MAX 2u
#define METERS_MAX 2u
#define ANALOGS_MAX 4u
#define UNIQUE_ID_BYTES 8u
#define KIND_BYTES 8u

enum analog_role {
    ROLE_NONE = 0,
    ROLE_VOLTS = 1, /* at the pins */
    ROLE_AMPS = 2,  /* of the supply */
    ROLE_PRESSURE = 3,
    ROLE_TEMPERATURE = 4,
    ROLE_OTHER = 5
};

enum reset_cause { RESET_POWER_ON = 1, RESET_EXTERNAL = 2, RESET_BROWN_OUT = 4, RESET_WATCHDOG = 8 };

/* In the order of the wire. Readings are left-justified: 65536 would be the converter's reference. */
enum limit {
    LIMIT_AMPS,
    LIMIT_AMPS_MS,
    LIMIT_RUN_MS,
    LIMIT_PRESSURE,
    LIMIT_PRESSURE_MS,
    LIMIT_DEAD_HEAD_PRESSURE,
    LIMIT_DEAD_HEAD_MS,
    LIMIT_DRY_AMPS,
    LIMIT_DRY_MS,
    LIMIT_VOLTS,
    LIMIT_VOLTS_MS,
    LIMIT_LINK_MS,
    LIMITS
};

struct description {
    uint32_t boot_id;    /* differs from the one before the reset */
    uint8_t reset_cause; /* bits of enum reset_cause, 0 unknown */
    uint8_t meters;
    uint8_t drives;
    uint8_t analogs;
    uint32_t tick_hz; /* whole thousands, so that a millisecond is a whole number of ticks */
    uint16_t pwm_hz[DRIVES_MAX];
    uint16_t ramp_limit; /* 1/65536 per millisecond */
    uint8_t roles[ANALOGS_MAX];
    uint32_t limits[LIMITS];
    uint8_t kind[KIND_BYTES]; /* printable ASCII, filled up with zeros */
};

#endif
