#include "cobs.h"

#define LONGEST_RUN 0xFFu

static struct cobs_result result(size_t length, enum cobs_status status) {
    struct cobs_result made = {length, status};
    return made;
}

struct cobs_result cobs_encode(const uint8_t *plain, size_t length, uint8_t *out, size_t capacity) {
    size_t code_at = 0;
    size_t next = 1;
    uint8_t code = 1;

    if (capacity == 0) {
        return result(0, COBS_NO_ROOM);
    }
    for (size_t i = 0; i < length; i++) {
        const uint8_t byte = plain[i];
        /* A full run needs a new code byte only when more bytes follow it, which is now certain. */
        if (code == LONGEST_RUN) {
            if (next >= capacity) {
                return result(0, COBS_NO_ROOM);
            }
            out[code_at] = code;
            code_at = next++;
            code = 1;
        }
        if (next >= capacity) {
            return result(0, COBS_NO_ROOM);
        }
        if (byte == 0) {
            out[code_at] = code;
            code_at = next++;
            code = 1;
        } else {
            out[next++] = byte;
            code++;
        }
    }
    out[code_at] = code;
    return result(next, COBS_OK);
}

struct cobs_result cobs_decode(const uint8_t *encoded, size_t length, uint8_t *out, size_t capacity) {
    size_t read = 0;
    size_t written = 0;

    while (read < length) {
        const uint8_t code = encoded[read++];
        if (code == 0) {
            return result(0, COBS_ZERO_INSIDE);
        }
        for (uint8_t i = 1; i < code; i++) {
            if (read >= length) {
                return result(0, COBS_RUNS_PAST_END);
            }
            const uint8_t byte = encoded[read++];
            if (byte == 0) {
                return result(0, COBS_ZERO_INSIDE);
            }
            if (written >= capacity) {
                return result(0, COBS_NO_ROOM);
            }
            out[written++] = byte;
        }
        if (code != LONGEST_RUN && read < length) {
            if (written >= capacity) {
                return result(0, COBS_NO_ROOM);
            }
            out[written++] = 0;
        }
    }
    return result(written, COBS_OK);
}
