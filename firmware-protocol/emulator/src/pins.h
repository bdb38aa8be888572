/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/* Levels of the chip's pins: from outside, and to the outside. */
#ifndef EMULATOR_PINS_H
#define EMULATOR_PINS_H

#include <simavr/sim_avr.h>

#include "chip.h"

void pins_drive(avr_t *avr, const struct chip_inputs *inputs, bool feedback_closed);
void pins_set_meter(avr_t *avr, unsigned meter, bool high);
struct chip_outputs pins_read(const avr_t *avr);

#endif
