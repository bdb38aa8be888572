/*
 * A ring of bytes between an interrupt and the main loop: one end puts, the other takes, and neither needs a lock,
 * because each index is one byte and has one writer.
 */
#ifndef STAND_RING_H
#define STAND_RING_H

#include <stdbool.h>
#include <stdint.h>

struct ring {
    volatile uint8_t *bytes;
    uint8_t mask; /* size - 1; the size is a power of two up to 256 */
    volatile uint8_t put_at;
    volatile uint8_t take_at;
};

static inline void ring_start(struct ring *ring, volatile uint8_t *bytes, uint16_t size) {
    ring->bytes = bytes;
    ring->mask = (uint8_t)(size - 1u);
    ring->put_at = 0;
    ring->take_at = 0;
}

/* One place stays free, so that full and empty differ. */
static inline uint8_t ring_room(const struct ring *ring) {
    return (uint8_t)((ring->take_at - ring->put_at - 1) & ring->mask);
}

/* Returns false, and loses the byte, when the ring is full. */
static inline bool ring_put(struct ring *ring, uint8_t byte) {
    const uint8_t at = ring->put_at;
    const uint8_t next = (uint8_t)((at + 1) & ring->mask);
    if (next == ring->take_at) {
        return false;
    }
    ring->bytes[at] = byte;
    ring->put_at = next;
    return true;
}

static inline bool ring_take(struct ring *ring, uint8_t *byte) {
    const uint8_t at = ring->take_at;
    if (at == ring->put_at) {
        return false;
    }
    *byte = ring->bytes[at];
    ring->take_at = (uint8_t)((at + 1) & ring->mask);
    return true;
}

#endif
