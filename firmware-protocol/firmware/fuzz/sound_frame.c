#include "sound_frame.h"

#include "hardware.h"
#include "listener.h"

#define PLAIN_MAX 46u
#define TYPES 0x10u
#define ESCAPE 0xFFu
#define TIME_PASSES 0xE2u

static uint32_t next_random(uint32_t *seed) {
    *seed = *seed * 1664525u + 1013904223u;
    return *seed >> 8;
}

/* Payload bytes of each host message; of blob-write, for one byte. */
static size_t payload_length(uint32_t type, uint32_t *seed) {
    static const uint8_t lengths[TYPES] = {0, 0, 4, 7, 3, 0, 0, 0, 5, 2, 0, 4, 4, 5, 2, 5};
    if (next_random(seed) % 16u == 0) {
        return next_random(seed) % (PLAIN_MAX - 6u);
    }
    return lengths[type] + (type == 0x0C ? next_random(seed) % 32u : 0u);
}

static void fill(uint8_t *payload, size_t length, uint32_t *seed) {
    for (size_t i = 0; i < length; i++) {
        /* Small values are in range more often. */
        payload[i] = (uint8_t)(next_random(seed) % (next_random(seed) % 2u == 0 ? 3u : 256u));
    }
}

static size_t stuff(const uint8_t *plain, size_t length, uint8_t *out) {
    size_t code = 0;
    size_t to = 1;
    for (size_t i = 0; i < length; i++) {
        if (plain[i] == 0) {
            out[code] = (uint8_t)(to - code);
            code = to++;
        } else {
            out[to++] = plain[i];
        }
    }
    out[code] = (uint8_t)(to - code);
    out[to++] = 0;
    return to;
}

size_t sound_frame(uint32_t seed, uint8_t bytes[SOUND_FRAME_MAX]) {
    uint8_t plain[PLAIN_MAX];
    uint8_t wire[PLAIN_MAX + 2u];
    const uint32_t type = next_random(&seed) % TYPES;
    const size_t length = payload_length(type, &seed);
    size_t to = 0;

    plain[0] = 1;
    plain[1] = (uint8_t)type;
    plain[2] = (uint8_t)next_random(&seed);
    plain[3] = 0;
    fill(plain + 4, length, &seed);
    if (type == 2) {
        for (size_t i = 0; i < 4; i++) {
            plain[4 + i] = (uint8_t)(FUZZ_BOOT_ID >> (8u * i));
        }
    }
    const unsigned check = listener_check_of(plain, 4u + length);
    plain[4u + length] = (uint8_t)check;
    plain[5u + length] = (uint8_t)(check >> 8);
    const size_t wire_length = stuff(plain, 6u + length, wire);
    for (size_t i = 0; i < wire_length; i++) {
        if (wire[i] == ESCAPE) {
            bytes[to++] = ESCAPE;
        }
        bytes[to++] = wire[i];
    }
    if (next_random(&seed) % 2u == 0) {
        bytes[to++] = ESCAPE;
        bytes[to++] = TIME_PASSES;
    }
    return to;
}
