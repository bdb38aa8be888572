/*
 * Frames of the wire protocol: COBS(version, type, sequence, payload, CRC) and a zero.
 * The receiver takes one byte at a time, keeps at most one frame and never more than FRAME_ENCODED_MAX bytes.
 */
#ifndef STAND_FRAME_H
#define STAND_FRAME_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "cobs.h"

#define FRAME_PAYLOAD_MAX 112u
#define FRAME_PLAIN_MIN 6u
#define FRAME_PLAIN_MAX (FRAME_PLAIN_MIN + FRAME_PAYLOAD_MAX)
#define FRAME_ENCODED_MAX COBS_ENCODED_MAX(FRAME_PLAIN_MAX)
/* The most bytes that a frame with this payload takes on the line, delimiter included. */
#define FRAME_WIRE_MAX(payload_length) (COBS_ENCODED_MAX((payload_length) + FRAME_PLAIN_MIN) + 1u)

struct frame {
    uint8_t version;
    uint8_t type;
    uint16_t sequence;
    uint8_t length;         /* of the payload */
    const uint8_t *payload; /* in the receiver's buffer until its next byte, or the caller's to send */
};

enum frame_outcome {
    FRAME_NONE, /* not at an end yet, or idle filling */
    FRAME_GOOD,
    FRAME_BAD_COBS,
    FRAME_BAD_LENGTH,
    FRAME_BAD_CRC
};

struct frame_receiver {
    uint8_t buffer[FRAME_ENCODED_MAX];
    uint8_t length;
    bool synchronised; /* false until the first delimiter: the line may have been opened inside a frame */
    bool too_long;     /* the rest of a frame that cannot be one is thrown away */
    uint16_t dropped;  /* frames with bad COBS, length or CRC; stays at its highest value */
};

struct frame_written {
    size_t length; /* bytes written, delimiter included; 0 unless the frame fitted */
    bool fitted;
};

void frame_receiver_start(struct frame_receiver *receiver);

/* Takes one byte. `frame` is filled in when the outcome is FRAME_GOOD, of whatever version and type it is. */
enum frame_outcome frame_receive(struct frame_receiver *receiver, uint8_t byte, struct frame *frame);

/* Where frame_encode lays the payload before it stuffs it: one that is there already is not moved. */
#define FRAME_PAYLOAD_AT 5u

/* Writes the frame with its delimiter. `out` needs FRAME_WIRE_MAX(frame->length) bytes. */
struct frame_written frame_encode(const struct frame *frame, uint8_t *out, size_t capacity);

#endif
