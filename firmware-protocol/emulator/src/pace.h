/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/*
 * Keeps virtual time at a speed against the wall clock. After a stall it must catch up, but a host that waits by the
 * wall clock must not meet a board far above its speed: a few exchanges are made up for at once, the rest slowly.
 */
#ifndef EMULATOR_PACE_H
#define EMULATOR_PACE_H

/* Virtual seconds per wall second; 0 is as fast as it goes. */
void pace_set_speed(double speed);

/* How many virtual microseconds may be made up for at once. */
void pace_set_burst(double virtual_us);

/* Waits until the wall clock has caught up with so many more virtual microseconds. A signal ends the wait early. */
void pace_advance(double virtual_us);

#endif
