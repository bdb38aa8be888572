/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/* The surroundings of the board: the plant link on standard input and output, or a toy. */
#ifndef EMULATOR_PLANT_H
#define EMULATOR_PLANT_H

#include <stdbool.h>

enum plant_kind { PLANT_LINK, PLANT_NONE };

/* Begins an exchange of so many microseconds. False when the program should end. */
bool plant_exchange(enum plant_kind kind, double exchange_us);

#endif
