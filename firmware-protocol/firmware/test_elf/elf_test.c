/* The ELF as it goes onto the chip, in the emulator: what only the real hardware layer can get wrong. */
#include <stdio.h>

#include "check.h"
#include "elf_suites.h"

int main(int count, char **words) {
    if (count != 3) {
        fputs("usage: elf-tests EMULATOR ELF\n", stderr);
        return 2;
    }
    emulated_use(words[1], words[2]);
    identity_tests();
    contactor_tests();
    input_tests();
    limit_tests();
    drive_tests();
    reading_tests();
    meter_tests();
    store_tests();
    reset_tests();
    line_tests();
    return check_summary();
}
