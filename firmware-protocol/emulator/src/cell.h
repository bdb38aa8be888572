/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/*
 * What the library leaves out of the EEPROM: a byte takes 3.4 ms to write, EEPE reads 1 meanwhile, and a loss of supply
 * in that time leaves the byte half written.
 */
#ifndef EMULATOR_CELL_H
#define EMULATOR_CELL_H

#include <simavr/sim_avr.h>

void cell_watch(avr_t *avr);

/* After a reset. A byte in writing is finished, as the chip does while it has its supply. */
void cell_forget(void);

/* The supply went away: a byte in writing keeps some of its bits erased. */
void cell_tear(avr_t *avr);

#endif
