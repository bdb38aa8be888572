/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "eeprom_file.h"

#include <limits.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "chip.h"

static const char *path;
static uint8_t written[EEPROM_SIZE];

void eeprom_file_open(const char *new_path) {
    path = new_path;
    memcpy(written, chip_eeprom(), EEPROM_SIZE);
    FILE *const file = fopen(path, "rb");
    if (file != NULL) {
        const size_t got = fread(written, 1, EEPROM_SIZE, file);
        fclose(file);
        memcpy(chip_eeprom(), written, got);
    }
}

/* Written beside and moved into place: whoever kills the emulator finds the old contents or the new. */
void eeprom_file_keep(void) {
    const uint8_t *const now = chip_eeprom();
    char fresh[PATH_MAX];
    if (path == NULL || memcmp(now, written, EEPROM_SIZE) == 0) {
        return;
    }
    snprintf(fresh, sizeof fresh, "%s.new", path);
    FILE *const file = fopen(fresh, "wb");
    if (file == NULL || fwrite(now, 1, EEPROM_SIZE, file) != EEPROM_SIZE || fclose(file) != 0
        || rename(fresh, path) != 0) {
        fprintf(stderr, "stand-emulator: cannot write %s\n", path);
        exit(2);
    }
    memcpy(written, now, EEPROM_SIZE);
}
