#include "check.h"
#include "crc16.h"
#include "suites.h"

#include <string.h>

/* Check value and residue: Catalogue of parametrised CRC algorithms, entry CRC-16/IBM-3740. */
static void the_catalogue_check_value_comes_out(void) {
    CHECK_EQUAL(0x29B1, crc16((const uint8_t *)"123456789", 9));
}

static void the_catalogue_residue_is_left_behind_the_check(void) {
    uint8_t bytes[11] = "123456789";
    bytes[9] = 0x29;
    bytes[10] = 0xB1;
    CHECK_EQUAL(0x0000, crc16(bytes, sizeof bytes));
}

static void no_byte_leaves_the_start_value(void) {
    CHECK_EQUAL(CRC16_START, crc16(NULL, 0));
}

/* The definition, bit by bit, against the eight steps at once. */
static void every_byte_agrees_with_the_shift_register(void) {
    for (unsigned start = 0; start <= 0xFFFF; start += 251u) {
        for (unsigned byte = 0; byte <= 0xFF; byte++) {
            unsigned slow = start ^ (byte << 8);
            for (unsigned bit = 0; bit < 8; bit++) {
                slow = (slow & 0x8000u) != 0 ? (slow << 1) ^ 0x1021u : slow << 1;
            }
            CHECK_EQUAL(slow & 0xFFFFu, crc16_add((uint16_t)start, (uint8_t)byte));
        }
    }
}

void crc16_tests(void) {
    RUN(the_catalogue_check_value_comes_out);
    RUN(the_catalogue_residue_is_left_behind_the_check);
    RUN(no_byte_leaves_the_start_value);
    RUN(every_byte_agrees_with_the_shift_register);
}
