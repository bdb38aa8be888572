/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/* Commands that come between the exchanges: faults of the chip, of the line and of the contactor. */
#ifndef EMULATOR_COMMANDS_H
#define EMULATOR_COMMANDS_H

#include <stdbool.h>

/* What commands ask of the main loop. */
struct commands_requests {
    double freeze_us; /* still to be frozen */
    bool quit;
};

extern struct commands_requests commands_requests;

/* Carries out one line. The toy's commands count only `with_toy`. What is not known is told on standard error. */
void commands_take(const char *text, bool with_toy);

#endif
