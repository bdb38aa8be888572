/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/*
 * The emulated chip: an ATmega328P at 16 MHz that runs the firmware's ELF. Time is counted in virtual cycles since
 * start; they go on through resets of the chip and while it is frozen.
 */
#ifndef EMULATOR_CHIP_H
#define EMULATOR_CHIP_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#define CYCLES_PER_US 16u
#define ANALOG_PINS 4u

/* Bits of MCUSR. */
enum chip_reset { CHIP_POWER_ON = 1, CHIP_EXTERNAL = 2, CHIP_BROWN_OUT = 4 };

/* What the surroundings put on the chip's pins. */
struct chip_inputs {
    uint32_t millivolts[ANALOG_PINS];
    bool emergency_stop_closed;
    bool guard_closed;
};

/* What the pins give. */
struct chip_outputs {
    uint32_t pump_duty; /* 1/65536 */
    bool contactor_closed;
};

/* Bytes from and to the line; called while the chip runs. */
typedef bool (*chip_take_byte)(uint8_t *byte);
typedef void (*chip_put_byte)(uint8_t byte);

/* Ends the program with a message when the ELF cannot be run. */
void chip_load(const char *elf, chip_take_byte from_line, chip_put_byte to_line);

uint64_t chip_now(void);

/* False when the program on the chip crashed beyond what a watchdog rights. */
bool chip_run_until(uint64_t cycle);

/* Time passes, the chip stands still; bytes and edges of that time are lost. */
void chip_freeze_until(uint64_t cycle);

void chip_reset(enum chip_reset cause);

/* The chip spins with interrupts off. */
void chip_hang(void);

void chip_set_inputs(const struct chip_inputs *inputs);
struct chip_outputs chip_get_outputs(void);

/* Adds a rising edge of meter 0; edges must come in order. False when there are too many at once. */
bool chip_add_edge(uint64_t cycle);

/* The EEPROM as it is now; valid until the program ends. */
const uint8_t *chip_eeprom(size_t *size);
void chip_write_eeprom(const uint8_t *bytes, size_t size, size_t at);

#endif
