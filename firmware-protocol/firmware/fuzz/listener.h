/*
 * A frame parser of its own, written from the protocol and not from the core: it tells whether the bytes so far held a
 * sound `arm` frame for a boot id. It keeps the whole frame, which a board must not, and is slow.
 */
#ifndef STAND_FUZZ_LISTENER_H
#define STAND_FUZZ_LISTENER_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

struct listener {
    bool in_step; /* a delimiter was seen */
    size_t length;
    uint8_t frame[4096];
};

/* The check of a frame's bytes. */
unsigned listener_check_of(const uint8_t *bytes, size_t length);

/* Takes a byte; true when it ends a sound `arm` frame of version 1 with this boot id. */
bool listener_hears_arm(struct listener *listener, uint8_t byte, uint32_t boot_id);

#endif
