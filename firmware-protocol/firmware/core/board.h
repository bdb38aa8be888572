/*
 * The board: its states and everything that leads from one to the other.
 * board_start once, then board_poll for ever; it never waits and is done in a few milliseconds at most.
 */
#ifndef STAND_BOARD_H
#define STAND_BOARD_H

#include <stdbool.h>
#include <stdint.h>

#include "blobs.h"
#include "drive.h"
#include "event_log.h"
#include "frame.h"
#include "inputs.h"
#include "message.h"
#include "pulse_meter.h"
#include "stream.h"
#include "watch.h"

/* An answer that a command still waits for. */
struct owed {
    bool waits;
    uint8_t type;
    uint16_t sequence;
};

struct board {
    struct description *description;
    struct identity identity;
    uint32_t ticks_per_ms;
    uint8_t version; /* of the protocol; only a test board speaks another one than PROTOCOL_VERSION */
    uint8_t state;
    uint16_t failed; /* self-test bits that locked the board */
    uint16_t next_sequence;
    uint32_t last_heard; /* board time of the last sound host frame */
    uint32_t last_ms;    /* board time of the last millisecond step */
    uint32_t last_step;  /* board time at which it was truly taken */
    uint32_t last_reading; /* board time at which the converter last had a new one, while it is watched */
    bool letting_go;          /* the contactor was let go and its feedback has not opened yet */
    uint32_t contactor_since; /* board time at which it was pulled or let go */
    struct inputs inputs;
    struct frame_receiver receiver;
    struct drive drives[DRIVES_MAX];
    struct watch watch;
    struct stream stream;
    struct event_log events;
    struct pulse_meter pulse_meters[METERS_MAX];
    uint16_t window_ms; /* 0: no pulse windows */
    bool window_waits;  /* one is over and finds no room; samples let it go first */
    struct blobs blobs;
    struct owed owed_events; /* events-from: acknowledged behind the last event */
    struct owed owed_blob;   /* blob-write and blob-commit: acknowledged when stored */
    bool testing;            /* a self-test runs */
};

/* Makes safe, notes the start as the first event and begins the line with a delimiter. */
void board_start(struct board *board, struct description *description, uint8_t version);

void board_poll(struct board *board);

#endif
