#include "board.h"

#include <string.h>

#include "commands.h"
#include "hal.h"
#include "safety.h"
#include "sampling.h"
#include "self_test.h"
#include "send.h"
#include "windows.h"

/* So many bytes are looked at before the rest of the work has its turn again. */
#define BYTES_PER_POLL 32u
/*
 * A step that comes late because the board was busy makes up for so many milliseconds of the ramp, so that a ramp takes
 * the time that it should. After a longer stall the ramp goes on from where it was: the outputs do not leap.
 */
#define MS_PER_STEP 4u

static void identify(struct board *board) {
    board->identity.firmware_major = FIRMWARE_MAJOR;
    board->identity.firmware_minor = FIRMWARE_MINOR;
    board->identity.firmware_patch = FIRMWARE_PATCH;
    if (blobs_available(&board->blobs, 0, 0, UNIQUE_ID_BYTES) == UNIQUE_ID_BYTES) {
        blobs_read(&board->blobs, 0, 0, UNIQUE_ID_BYTES, board->identity.unique_id);
    }
}

void board_start(struct board *board, struct description *description, uint8_t version) {
    memset(board, 0, sizeof *board);
    board->description = description;
    board->version = version;
    board->ticks_per_ms = description->tick_hz / 1000u;
    board->last_ms = hal_ticks();
    board->last_step = board->last_ms;
    board->last_heard = board->last_ms;
    frame_receiver_start(&board->receiver);
    inputs_start(&board->inputs);
    event_log_start(&board->events);
    safety_start(board);
    blobs_start(&board->blobs);
    identify(board);
    send_delimiter();
}

static void receive(struct board *board) {
    uint8_t byte;
    struct frame frame;

    for (uint8_t i = 0; i < BYTES_PER_POLL && hal_rx_take(&byte); i++) {
        if (frame_receive(&board->receiver, byte, &frame) == FRAME_GOOD) {
            commands_obey(board, &frame);
        }
    }
}

/* The whole milliseconds since the last step, MS_PER_STEP at most: what is beyond is given up. */
static uint8_t take_milliseconds(struct board *board, uint32_t now) {
    uint8_t ms = 0;

    while (ms < MS_PER_STEP && now - board->last_ms >= board->ticks_per_ms) {
        board->last_ms += board->ticks_per_ms;
        ms++;
    }
    if (now - board->last_ms >= board->ticks_per_ms) {
        board->last_ms = now;
    }
    return ms;
}

static void step(struct board *board, uint32_t now) {
    const uint8_t ms = take_milliseconds(board, now);

    if (ms == 0) {
        return;
    }
    safety_watch_inputs(board, now, now - board->last_step);
    board->last_step = now;
    sampling_collect(board, now);
    for (uint8_t i = 0; i < board->description->drives; i++) {
        drive_step(&board->drives[i], i, ms);
    }
    hal_watchdog_kick();
}

static void turn_dither(struct board *board, uint32_t now) {
    for (uint8_t i = 0; i < board->description->drives; i++) {
        drive_turn(&board->drives[i], i, now);
    }
}

static void work_on_blobs(struct board *board) {
    const struct refusal nothing = {REFUSE_NOTHING, 0};
    struct owed *const owed = &board->owed_blob;

    if (blobs_work(&board->blobs) && owed->waits) {
        owed->waits = false;
        send_answer(board, owed->sequence, owed->type, nothing);
    }
}

void board_poll(struct board *board) {
    safety_watch_link(board, hal_ticks());
    send_events(board);
    /* Before a new set point is received: the time until now belongs to the old one. */
    step(board, hal_ticks());
    receive(board);
    turn_dither(board, hal_ticks());
    windows_poll(board, hal_ticks());
    work_on_blobs(board);
    self_test_poll(board);
    if (stream_due(&board->stream, board->ticks_per_ms, hal_ticks())) {
        sampling_send(board);
    }
}
