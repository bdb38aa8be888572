/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "edges.h"

#define EDGES_MAX 4096u

static uint64_t waiting[EDGES_MAX];
static unsigned first;
static unsigned count;

bool edges_add(uint64_t cycle) {
    if (count == EDGES_MAX) {
        return false;
    }
    waiting[(first + count++) % EDGES_MAX] = cycle;
    return true;
}

bool edges_first(uint64_t *cycle) {
    if (count == 0) {
        return false;
    }
    *cycle = waiting[first];
    return true;
}

void edges_remove_first(void) {
    first = (first + 1u) % EDGES_MAX;
    count--;
}
