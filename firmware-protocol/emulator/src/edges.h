/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/* Rising edges of meter 0 that are still to come, in virtual cycles, in order. */
#ifndef EMULATOR_EDGES_H
#define EMULATOR_EDGES_H

#include <stdbool.h>
#include <stdint.h>

/* False when no more fit. */
bool edges_add(uint64_t cycle);
bool edges_first(uint64_t *cycle);
void edges_remove_first(void);

#endif
