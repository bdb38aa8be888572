/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/* Set by a signal that asks the program to end. */
#ifndef EMULATOR_STOP_H
#define EMULATOR_STOP_H

#include <signal.h>

extern volatile sig_atomic_t stop_asked;

#endif
