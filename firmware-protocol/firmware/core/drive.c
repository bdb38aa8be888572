#include "drive.h"

#include "hal.h"

static uint32_t with_dither(const struct drive *drive) {
    if (drive->level == 0 || drive->amplitude == 0) {
        return drive->level;
    }
    if (drive->up) {
        const uint32_t room = DUTY_FULL - drive->level;
        return drive->level + (drive->amplitude < room ? drive->amplitude : room);
    }
    return drive->level - (drive->amplitude < drive->level ? drive->amplitude : drive->level);
}

void drive_stop(struct drive *drive, uint8_t channel) {
    drive->target = 0;
    drive->level = 0;
    drive->amplitude = 0;
    hal_drive_set(channel, 0);
}

void drive_aim(struct drive *drive, uint32_t duty, uint16_t ramp, uint16_t ramp_limit) {
    drive->target = duty;
    drive->ramp = (ramp == 0 || ramp > ramp_limit) ? ramp_limit : ramp;
}

void drive_dither(struct drive *drive, uint8_t channel, uint16_t amplitude, uint32_t half_wave, uint32_t now) {
    if (amplitude == drive->amplitude && (amplitude == 0 || half_wave == drive->half_wave)) {
        return;
    }
    drive->amplitude = amplitude;
    drive->half_wave = half_wave;
    drive->turned = now;
    drive->up = true;
    hal_drive_set(channel, with_dither(drive));
}

void drive_step(struct drive *drive, uint8_t channel, uint8_t ms) {
    const uint32_t most = (uint32_t)drive->ramp * ms;

    if (drive->level == drive->target) {
        return;
    }
    if (drive->level < drive->target) {
        const uint32_t left = drive->target - drive->level;
        drive->level += left < most ? left : most;
    } else {
        const uint32_t left = drive->level - drive->target;
        drive->level -= left < most ? left : most;
    }
    hal_drive_set(channel, with_dither(drive));
}

void drive_turn(struct drive *drive, uint8_t channel, uint32_t now) {
    if (drive->amplitude == 0 || now - drive->turned < drive->half_wave) {
        return;
    }
    drive->turned += drive->half_wave;
    if (now - drive->turned >= drive->half_wave) {
        drive->turned = now;
    }
    drive->up = !drive->up;
    hal_drive_set(channel, with_dither(drive));
}

uint32_t drive_applied(const struct drive *drive, uint8_t channel) {
    return hal_drive_rounded(channel, drive->level);
}
