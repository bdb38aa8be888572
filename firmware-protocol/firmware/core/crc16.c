#include "crc16.h"

/* Eight steps of the shift register at once, without a table: flash is short on a small board. */
uint16_t crc16_add(uint16_t crc, uint8_t byte) {
    crc = (uint16_t)((crc >> 8) | (crc << 8));
    crc = (uint16_t)(crc ^ byte);
    crc = (uint16_t)(crc ^ ((crc & 0xFFu) >> 4));
    crc = (uint16_t)(crc ^ (crc << 12));
    crc = (uint16_t)(crc ^ ((crc & 0xFFu) << 5));
    return crc;
}

uint16_t crc16(const uint8_t *bytes, size_t length) {
    uint16_t crc = CRC16_START;
    for (size_t i = 0; i < length; i++) {
        crc = crc16_add(crc, bytes[i]);
    }
    return crc;
}
