/*
 * EEPROM: bytes 8..15 unique id (written once by who makes the board), bytes 16..19 how often the board started.
 * Byte 0 is left alone: on a brown-out it is the one most often spoilt (common practice, no source).
 */
#include <avr/eeprom.h>
#include <string.h>

#include "parts.h"

#define UNIQUE_ID_AT ((const void *)8)
#define STARTS_AT ((uint32_t *)16)
#define BLANK 0xFFu
/* An odd factor maps the counter one to one, so that neighbouring starts get ids that differ in many bits. */
#define SPREAD 2654435761ul

static bool is_blank(const uint8_t *bytes, uint8_t length) {
    for (uint8_t i = 0; i < length; i++) {
        if (bytes[i] != BLANK) {
            return false;
        }
    }
    return true;
}

void memory_identify(struct identity *identity) {
    const uint32_t starts = eeprom_read_dword(STARTS_AT) + 1u;

    eeprom_update_dword(STARTS_AT, starts);
    identity->boot_id = starts * SPREAD;
    eeprom_read_block(identity->unique_id, UNIQUE_ID_AT, sizeof identity->unique_id);
    if (is_blank(identity->unique_id, sizeof identity->unique_id)) {
        memset(identity->unique_id, 0, sizeof identity->unique_id);
    }
}
