/*
 * Consistent overhead byte stuffing: bytes without a zero, so that a zero can end a frame.
 * Source: S. Cheshire and M. Baker, Consistent Overhead Byte Stuffing, IEEE/ACM Transactions on Networking 7 (2), 1999.
 * The delimiter is not part of what these functions read or write.
 */
#ifndef STAND_COBS_H
#define STAND_COBS_H

#include <stddef.h>
#include <stdint.h>

/* The most bytes that `plain_length` bytes can need once they are stuffed. */
#define COBS_ENCODED_MAX(plain_length) ((plain_length) + (plain_length) / 254u + 1u)

enum cobs_status {
    COBS_OK,
    COBS_NO_ROOM,      /* the caller's buffer is too small */
    COBS_ZERO_INSIDE,  /* a zero where stuffed bytes have none */
    COBS_RUNS_PAST_END /* a length code that points behind the last byte */
};

struct cobs_result {
    size_t length; /* bytes written; meaningless unless the status is COBS_OK */
    enum cobs_status status;
};

/* Up to 254 bytes may be stuffed in place: `plain` may then be `out + 1`. */
struct cobs_result cobs_encode(const uint8_t *plain, size_t length, uint8_t *out, size_t capacity);

/* May work in place: `out` may be `encoded`. */
struct cobs_result cobs_decode(const uint8_t *encoded, size_t length, uint8_t *out, size_t capacity);

#endif
