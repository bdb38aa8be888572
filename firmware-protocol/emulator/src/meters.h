/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/* The meters' pulses: rising edges that are still to come, and the pins that they raise. */
#ifndef EMULATOR_METERS_H
#define EMULATOR_METERS_H

#include <stdbool.h>
#include <stdint.h>

#include <simavr/sim_avr.h>

#define METERS 2u

/* Adds a rising edge, in virtual cycles; each meter's must come in order. False when there are too many. */
bool meters_add_edge(unsigned meter, uint64_t cycle);

/* Loses what should have come before this virtual cycle. */
void meters_lose_before(uint64_t cycle);

/* Has the chip's timers raise the pins; anew after a reset, freeze or new edge. Virtual = chip's cycles + offset. */
void meters_watch(avr_t *avr, uint64_t offset);

#endif
