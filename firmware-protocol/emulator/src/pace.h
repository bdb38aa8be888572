/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/* Keeps virtual time at a speed against the wall clock. */
#ifndef EMULATOR_PACE_H
#define EMULATOR_PACE_H

/* Virtual seconds per wall second; 0 is as fast as it goes. */
void pace_set_speed(double speed);

/* Waits until the wall clock has caught up with so many more virtual microseconds. A signal ends the wait early. */
void pace_advance(double virtual_us);

#endif
