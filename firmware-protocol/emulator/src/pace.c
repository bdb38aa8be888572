/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "pace.h"

#include <stdbool.h>
#include <time.h>

/* Who is later than this does not hurry after it. */
#define LATEST_NS 100e6
/* How much faster than its speed it may run to catch up. */
#define HURRY 1.25

static double speed = 1.0;
static double burst_us;
static bool running;
static double due_ns;  /* when the virtual time reached so far is due by the speed */
static double gate_ns; /* when it may be reached at the earliest, hurrying */

static double wall_ns(void) {
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    return (double)now.tv_sec * 1e9 + (double)now.tv_nsec;
}

void pace_set_speed(double new_speed) {
    speed = new_speed;
    running = false;
}

void pace_set_burst(double virtual_us) {
    burst_us = virtual_us;
}

static void wait_until(double ns) {
    struct timespec until;
    until.tv_sec = (time_t)(ns / 1e9);
    until.tv_nsec = (long)(ns - (double)until.tv_sec * 1e9);
    clock_nanosleep(CLOCK_MONOTONIC, TIMER_ABSTIME, &until, NULL);
}

void pace_advance(double virtual_us) {
    if (speed <= 0.0) {
        return;
    }
    const double now = wall_ns();
    const double part_ns = virtual_us * 1e3 / speed;
    const double burst_ns = burst_us * 1e3 / speed;
    if (!running || now - due_ns > LATEST_NS) {
        due_ns = now;
        running = true;
    }
    if (gate_ns < now - burst_ns) {
        gate_ns = now - burst_ns;
    }
    due_ns += part_ns;
    gate_ns += part_ns / HURRY;
    const double earliest = due_ns > gate_ns ? due_ns : gate_ns;
    if (earliest > now) {
        wait_until(earliest);
    }
}
