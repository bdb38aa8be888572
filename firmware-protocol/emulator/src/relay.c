/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "relay.h"

#include "chip.h"

/* A contactor of this size takes some 10 ms to close or to open (common practice, no source). */
#define TRAVEL_CYCLES (10000u * CYCLES_PER_US)

static enum relay_mode mode = RELAY_AUTO;
static bool was_pulled;
static bool contact_closed;
static uint64_t turned_at;

void relay_set_mode(enum relay_mode new_mode) {
    mode = new_mode;
}

bool relay_follow(bool pulled, uint64_t cycle) {
    if (pulled != was_pulled) {
        was_pulled = pulled;
        turned_at = cycle;
    }
    if (cycle - turned_at >= TRAVEL_CYCLES) {
        contact_closed = pulled;
    }
    return mode == RELAY_AUTO ? contact_closed : mode == RELAY_CLOSED;
}
