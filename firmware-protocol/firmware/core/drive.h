/* One drive output: its set point, the ramp towards it, and the dither that is laid over it. */
#ifndef STAND_DRIVE_H
#define STAND_DRIVE_H

#include <stdbool.h>
#include <stdint.h>

struct drive {
    uint32_t target; /* the set point, 0 .. DUTY_FULL */
    uint32_t level;  /* where the ramp is now */
    uint16_t ramp;   /* most change per millisecond */
    uint16_t amplitude; /* of the dither; 0 is off */
    bool up;            /* which half of the dither's wave it is */
    uint32_t half_wave; /* ticks */
    uint32_t turned;    /* board time at which this half began */
};

/* At once to zero, not ramped; the dither goes too. */
void drive_stop(struct drive *drive, uint8_t channel);

/* Takes a set point. `ramp` 0 means the limit; the slower of both is used. */
void drive_aim(struct drive *drive, uint32_t duty, uint16_t ramp, uint16_t ramp_limit);

/* Takes a dither; the one that runs already changes nothing. */
void drive_dither(struct drive *drive, uint8_t channel, uint16_t amplitude, uint32_t half_wave, uint32_t now);

/* So many milliseconds of ramp. */
void drive_step(struct drive *drive, uint8_t channel, uint8_t ms);

/* Turns the dither's wave when its half is over; in every poll. */
void drive_turn(struct drive *drive, uint8_t channel, uint32_t now);

/* What the pin gets after ramp and rounding, dither left out. */
uint32_t drive_applied(const struct drive *drive, uint8_t channel);

#endif
