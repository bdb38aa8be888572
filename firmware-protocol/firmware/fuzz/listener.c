#include "listener.h"

#define ARM_LENGTH 10u /* version, type, sequence, boot id, check */

/* The check bit by bit, as the textbook has it. */
unsigned listener_check_of(const uint8_t *bytes, size_t length) {
    unsigned check = 0xFFFF;
    for (size_t i = 0; i < 8u * length; i++) {
        const unsigned bit = (bytes[i / 8u] >> (7u - i % 8u)) & 1u;
        const unsigned top = check >> 15;
        check = (check << 1) & 0xFFFFu;
        if (top != bit) {
            check ^= 0x1021u;
        }
    }
    return check;
}

/* Unstuffs into `plain`, which is as long as the frame. Returns the length, or 0 for a frame that was not stuffed so. */
static size_t unstuff(const uint8_t *frame, size_t length, uint8_t *plain) {
    size_t from = 0;
    size_t to = 0;
    while (from < length) {
        const size_t run = frame[from];
        if (run > length - from) {
            return 0;
        }
        for (size_t i = 1; i < run; i++) {
            plain[to++] = frame[from + i];
        }
        from += run;
        if (run < 255 && from < length) {
            plain[to++] = 0;
        }
    }
    return to;
}

static bool is_arm(const uint8_t *plain, size_t length, uint32_t boot_id) {
    if (length != ARM_LENGTH || plain[0] != 1 || plain[1] != 2) {
        return false;
    }
    for (size_t i = 0; i < 4; i++) {
        if (plain[4 + i] != ((boot_id >> (8u * i)) & 0xFFu)) {
            return false;
        }
    }
    return listener_check_of(plain, 8) == (unsigned)(plain[8] | plain[9] << 8);
}

bool listener_hears_arm(struct listener *listener, uint8_t byte, uint32_t boot_id) {
    uint8_t plain[sizeof listener->frame];

    if (byte != 0) {
        if (listener->length < sizeof listener->frame) {
            listener->frame[listener->length++] = byte;
        }
        return false;
    }
    const bool heard = listener->in_step && is_arm(plain, unstuff(listener->frame, listener->length, plain), boot_id);
    listener->in_step = true;
    listener->length = 0;
    return heard;
}
