/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "cell.h"

#include <stdbool.h>
#include <stdio.h>

#include "chip.h"

/* Data addresses and bits of the ATmega328P (data sheet, register summary and EEPROM chapter). */
enum { EECR_AT = 0x3F, EEARL_AT = 0x41, EEARH_AT = 0x42 };
enum { EEPE = 1u << 1, EEMPE = 1u << 2 };
#define WRITE_CYCLES (3400u * CYCLES_PER_US)

static bool writing;
static avr_cycle_count_t began;
static unsigned address;

static bool is_busy(const avr_t *avr) {
    if (writing && avr->cycle - began >= WRITE_CYCLES) {
        writing = false;
    }
    return writing;
}

/* The library keeps what was read, so the bit of an earlier reading must go. */
static uint8_t on_read(avr_t *avr, avr_io_addr_t at, void *parameter) {
    const unsigned others = avr->data[at] & ~(unsigned)EEPE;
    (void)parameter;
    return (uint8_t)(others | (is_busy(avr) ? EEPE : 0u));
}

/* Comes after the library's own handler, which has stored the byte already. */
static void on_write(avr_t *avr, avr_io_addr_t at, uint8_t value, void *parameter) {
    (void)at;
    (void)parameter;
    if ((value & (EEPE | EEMPE)) != (EEPE | EEMPE)) {
        return;
    }
    if (is_busy(avr)) {
        fputs("stand-emulator: the firmware wrote to the EEPROM while it was busy\n", stderr);
    }
    writing = true;
    began = avr->cycle;
    address = (unsigned)avr->data[EEARL_AT] | ((unsigned)avr->data[EEARH_AT] & 3u) << 8;
}

void cell_watch(avr_t *avr) {
    avr_register_io_read(avr, EECR_AT, on_read, NULL);
    avr_register_io_write(avr, EECR_AT, on_write, NULL);
}

void cell_forget(void) {
    writing = false;
}

void cell_tear(avr_t *avr) {
    if (is_busy(avr)) {
        /* First every bit is erased to 1, then the zeros are written: here half of the zeros are. */
        chip_eeprom()[address] |= 0x55u;
    }
}
