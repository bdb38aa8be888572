/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "eeprom_file.h"

#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "chip.h"

#define EEPROM_SIZE 1024u

static const char *path;
static uint8_t written[EEPROM_SIZE];

void eeprom_file_open(const char *new_path) {
    size_t size;
    path = new_path;
    memcpy(written, chip_eeprom(&size), EEPROM_SIZE);
    FILE *const file = fopen(path, "rb");
    if (file != NULL) {
        const size_t got = fread(written, 1, EEPROM_SIZE, file);
        fclose(file);
        chip_write_eeprom(written, got, 0);
    }
}

void eeprom_file_keep(void) {
    size_t size;
    const uint8_t *const now = chip_eeprom(&size);
    if (path == NULL || memcmp(now, written, EEPROM_SIZE) == 0) {
        return;
    }
    FILE *const file = fopen(path, "wb");
    if (file == NULL || fwrite(now, 1, EEPROM_SIZE, file) != EEPROM_SIZE || fclose(file) != 0) {
        fprintf(stderr, "stand-emulator: cannot write %s\n", path);
        exit(2);
    }
    memcpy(written, now, EEPROM_SIZE);
}
