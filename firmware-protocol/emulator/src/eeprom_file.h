/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/* EEPROM contents that outlive the program. */
#ifndef EMULATOR_EEPROM_FILE_H
#define EMULATOR_EEPROM_FILE_H

/* Reads the file if it is there; from now on eeprom_file_keep writes it. */
void eeprom_file_open(const char *path);

/* Writes the file when the EEPROM has changed. */
void eeprom_file_keep(void);

#endif
