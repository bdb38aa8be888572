/* CRC-16/IBM-3740: polynomial 1021h, start FFFFh, not reflected, no final change. "123456789" gives 29B1h. */
#ifndef STAND_CRC16_H
#define STAND_CRC16_H

#include <stddef.h>
#include <stdint.h>

#define CRC16_START 0xFFFFu

uint16_t crc16_add(uint16_t crc, uint8_t byte);

uint16_t crc16(const uint8_t *bytes, size_t length);

#endif
