#include "drive.h"

#include "hal.h"

void drive_stop(struct drive *drive, uint8_t channel) {
    drive->target = 0;
    drive->level = 0;
    drive->applied = hal_drive_set(channel, 0);
}

void drive_aim(struct drive *drive, uint32_t duty, uint16_t ramp, uint16_t ramp_limit) {
    drive->target = duty;
    drive->ramp = (ramp == 0 || ramp > ramp_limit) ? ramp_limit : ramp;
}

void drive_step(struct drive *drive, uint8_t channel) {
    if (drive->level == drive->target) {
        return;
    }
    if (drive->level < drive->target) {
        const uint32_t left = drive->target - drive->level;
        drive->level += left < drive->ramp ? left : drive->ramp;
    } else {
        const uint32_t left = drive->level - drive->target;
        drive->level -= left < drive->ramp ? left : drive->ramp;
    }
    drive->applied = hal_drive_set(channel, drive->level);
}
