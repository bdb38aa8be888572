/*
 * The board: states safe and armed, and everything that leads from one to the other.
 * board_start once, then board_poll for ever; it never waits and is done in a few milliseconds at most.
 */
#ifndef STAND_BOARD_H
#define STAND_BOARD_H

#include <stdbool.h>
#include <stdint.h>

#include "drive.h"
#include "event_queue.h"
#include "frame.h"
#include "message.h"
#include "over_current.h"
#include "stream.h"

struct board {
    const struct identity *identity;
    uint32_t ticks_per_ms;
    uint8_t version; /* of the protocol; only a test board speaks another one than PROTOCOL_VERSION */
    uint8_t state;
    uint16_t next_sequence;
    uint32_t last_heard; /* board time of the last sound host frame */
    uint32_t last_ms;    /* board time of the last millisecond step */
    struct frame_receiver receiver;
    struct drive drives[DRIVES_MAX];
    struct over_current over_current;
    struct stream stream;
    struct event_queue events;
};

/* Makes safe, notes the start as the first event and begins the line with a delimiter. */
void board_start(struct board *board, const struct identity *identity, uint8_t version);

void board_poll(struct board *board);

#endif
