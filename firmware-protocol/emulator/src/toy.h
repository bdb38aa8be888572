/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/* The toy plant: steady values and meters that follow the pump's duty, each of which a command can change. */
#ifndef EMULATOR_TOY_H
#define EMULATOR_TOY_H

#include <stdbool.h>

/* Puts the toy's values on the pins for an exchange of so many microseconds. */
void toy_exchange(double exchange_us);

/* A command such as `guard 0`, `amps-code 50000` or `meter-hz auto`. False when it is none of the toy's. */
bool toy_command(const char *word, const char *value);

#endif
