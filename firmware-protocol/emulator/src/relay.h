/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/* The contactor's auxiliary contact, whose loop is the board's feedback input. */
#ifndef EMULATOR_RELAY_H
#define EMULATOR_RELAY_H

#include <stdbool.h>
#include <stdint.h>

/* AUTO: the contact follows the contactor's pin. The others are what a broken contactor does. */
enum relay_mode { RELAY_OPEN, RELAY_CLOSED, RELAY_AUTO };

void relay_set_mode(enum relay_mode mode);

/* Tells what the pin does at this virtual cycle, and returns whether the contact is closed. */
bool relay_follow(bool pulled, uint64_t cycle);

#endif
