/* One drive output: its set point and the ramp towards it. */
#ifndef STAND_DRIVE_H
#define STAND_DRIVE_H

#include <stdint.h>

struct drive {
    uint32_t target;  /* the set point, 0 .. DUTY_FULL */
    uint32_t level;   /* where the ramp is now */
    uint32_t applied; /* what the pin gets, after the rounding of the hardware */
    uint16_t ramp;    /* most change per millisecond */
};

/* At once to zero, not ramped. */
void drive_stop(struct drive *drive, uint8_t channel);

/* Takes a set point. `ramp` 0 means the limit; the slower of both is used. */
void drive_aim(struct drive *drive, uint32_t duty, uint16_t ramp, uint16_t ramp_limit);

/* One millisecond of ramp. */
void drive_step(struct drive *drive, uint8_t channel);

#endif
