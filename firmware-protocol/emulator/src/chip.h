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
#define DRIVES 2u
#define CODE_MAX 1023u
#define EEPROM_SIZE 1024u

/* Bits of MCUSR. */
enum chip_reset { CHIP_POWER_ON = 1, CHIP_EXTERNAL = 2, CHIP_BROWN_OUT = 4, CHIP_WATCHDOG = 8 };

/* Bits of `closed`, as the protocol orders them. */
enum chip_loop { LOOP_EMERGENCY_STOP = 1, LOOP_GUARD = 2, LOOP_LEVEL = 4, LOOP_OVERRIDE = 8, LOOPS_ALL = 15 };

/* What the surroundings put on the chip's pins. */
struct chip_inputs {
    uint16_t codes[ANALOG_PINS]; /* what the converter should read, 0 .. CODE_MAX */
    uint8_t closed;              /* loops that are closed */
};

/* What the pins give at this moment. */
struct chip_outputs {
    uint32_t duty[DRIVES]; /* 1/65536 */
    bool contactor_pulled;
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

/* A loss of supply, power-on or brown-out, spoils the RAM and the EEPROM byte that is being written. */
void chip_reset(enum chip_reset cause);

/* The chip spins with interrupts off. */
void chip_hang(void);

void chip_set_inputs(const struct chip_inputs *inputs);
void chip_set_feedback(bool closed);
struct chip_outputs chip_get_outputs(void);

/* Adds a rising edge of a meter; each meter's must come in order. False when there are too many at once. */
bool chip_add_edge(unsigned meter, uint64_t cycle);

/* The EEPROM's EEPROM_SIZE bytes; valid until the program ends. */
uint8_t *chip_eeprom(void);

#endif
