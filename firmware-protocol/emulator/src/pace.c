/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "pace.h"

#include <stdbool.h>
#include <time.h>

/* Who is later than this does not hurry after it. */
#define LATEST_NS 100e6

static double speed = 1.0;
static double due_ns;
static bool running;

static double wall_ns(void) {
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    return (double)now.tv_sec * 1e9 + (double)now.tv_nsec;
}

void pace_set_speed(double new_speed) {
    speed = new_speed;
    running = false;
}

void pace_advance(double virtual_us) {
    if (speed <= 0.0) {
        return;
    }
    const double now = wall_ns();
    if (!running || now - due_ns > LATEST_NS) {
        due_ns = now;
        running = true;
    }
    due_ns += virtual_us * 1e3 / speed;
    if (due_ns > now) {
        struct timespec until;
        until.tv_sec = (time_t)(due_ns / 1e9);
        until.tv_nsec = (long)(due_ns - (double)until.tv_sec * 1e9);
        clock_nanosleep(CLOCK_MONOTONIC, TIMER_ABSTIME, &until, NULL);
    }
}
