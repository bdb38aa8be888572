#include "frame.h"

#include <string.h>

#include "bytes.h"
#include "crc16.h"

#define DELIMITER 0u
#define HEADER_LENGTH 4u
#define CRC_LENGTH 2u

void frame_receiver_start(struct frame_receiver *receiver) {
    memset(receiver, 0, sizeof *receiver);
}

static enum frame_outcome check(struct frame_receiver *receiver, struct frame *frame) {
    uint8_t *const bytes = receiver->buffer;
    const struct cobs_result plain = cobs_decode(bytes, receiver->length, bytes, FRAME_ENCODED_MAX);

    if (plain.status != COBS_OK) {
        return FRAME_BAD_COBS;
    }
    if (plain.length < FRAME_PLAIN_MIN || plain.length > FRAME_PLAIN_MAX) {
        return FRAME_BAD_LENGTH;
    }
    const size_t covered = plain.length - CRC_LENGTH;
    if (crc16(bytes, covered) != get_u16(bytes + covered)) {
        return FRAME_BAD_CRC;
    }
    frame->version = bytes[0];
    frame->type = bytes[1];
    frame->sequence = get_u16(bytes + 2);
    frame->length = (uint8_t)(covered - HEADER_LENGTH);
    frame->payload = bytes + HEADER_LENGTH;
    return FRAME_GOOD;
}

static enum frame_outcome end_of_frame(struct frame_receiver *receiver, struct frame *frame) {
    if (!receiver->synchronised) {
        receiver->synchronised = true;
        return FRAME_NONE;
    }
    if (receiver->too_long) {
        return FRAME_BAD_LENGTH;
    }
    if (receiver->length == 0) {
        return FRAME_NONE;
    }
    return check(receiver, frame);
}

enum frame_outcome frame_receive(struct frame_receiver *receiver, uint8_t byte, struct frame *frame) {
    if (byte != DELIMITER) {
        if (receiver->length < FRAME_ENCODED_MAX) {
            receiver->buffer[receiver->length++] = byte;
        } else {
            receiver->too_long = true;
        }
        return FRAME_NONE;
    }
    const enum frame_outcome outcome = end_of_frame(receiver, frame);
    receiver->length = 0;
    receiver->too_long = false;
    if (outcome != FRAME_NONE && outcome != FRAME_GOOD && receiver->dropped < UINT16_MAX) {
        receiver->dropped++;
    }
    return outcome;
}

struct frame_written frame_encode(const struct frame *frame, uint8_t *out, size_t capacity) {
    struct frame_written written = {0, false};

    if (frame->length > FRAME_PAYLOAD_MAX || capacity < FRAME_WIRE_MAX((size_t)frame->length)) {
        return written;
    }
    /* The plain frame is laid one byte in, where it can be stuffed in place. */
    uint8_t *const plain = out + 1;
    uint8_t *at = put_u8(plain, frame->version);
    at = put_u8(at, frame->type);
    at = put_u16(at, frame->sequence);
    if (frame->length > 0) {
        memmove(at, frame->payload, frame->length);
        at += frame->length;
    }
    put_u16(at, crc16(plain, HEADER_LENGTH + (size_t)frame->length));
    const size_t plain_length = FRAME_PLAIN_MIN + (size_t)frame->length;
    const struct cobs_result stuffed = cobs_encode(plain, plain_length, out, capacity - 1u);
    if (stuffed.status != COBS_OK) {
        return written;
    }
    out[stuffed.length] = DELIMITER;
    written.length = stuffed.length + 1u;
    written.fitted = true;
    return written;
}
