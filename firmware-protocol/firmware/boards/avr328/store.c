/*
 * EEPROM: bytes 16..19 how often the board started, bytes 32 and up the core's store.
 * Byte 0 is left alone: on a brown-out it is the one most often spoilt (common practice, no source).
 */
#include <avr/eeprom.h>
#include <util/atomic.h>

#include "hal.h"
#include "parts.h"

#define STARTS_AT ((uint32_t *)16)
#define STORE_AT 32u
/* An odd factor maps the counter one to one, so that neighbouring starts get ids that differ in many bits. */
#define SPREAD 2654435761ul

uint32_t store_fresh_boot_id(void) {
    const uint32_t starts = eeprom_read_dword(STARTS_AT) + 1u;

    eeprom_update_dword(STARTS_AT, starts);
    eeprom_busy_wait();
    return starts * SPREAD;
}

bool hal_store_busy(void) {
    return !eeprom_is_ready();
}

void hal_store_write(uint16_t at, uint8_t byte) {
    EEAR = STORE_AT + at;
    EEDR = byte;
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        EECR = _BV(EEMPE); /* erase and write in one, without the ready interrupt */
        EECR |= _BV(EEPE); /* within four cycles */
    }
}

uint8_t hal_store_read(uint16_t at) {
    eeprom_busy_wait();
    return eeprom_read_byte((const uint8_t *)(STORE_AT + at));
}
