#include "board.h"

#include <string.h>

#include "analog.h"
#include "commands.h"
#include "hal.h"
#include "safety.h"
#include "send.h"

/* So many bytes are looked at before the rest of the work has its turn again. */
#define BYTES_PER_POLL 32u

void board_start(struct board *board, const struct identity *identity, uint8_t version) {
    memset(board, 0, sizeof *board);
    board->identity = identity;
    board->version = version;
    board->ticks_per_ms = identity->tick_hz / 1000u;
    board->last_ms = hal_ticks();
    board->last_heard = board->last_ms;
    frame_receiver_start(&board->receiver);
    safety_start(board);
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

static void collect_analog(struct board *board, uint32_t now) {
    struct analog_sums taken;

    hal_analog_take(&taken);
    analog_join(&board->stream.window, &taken);
    safety_watch_current(board, &taken, now);
}

static void step_millisecond(struct board *board, uint32_t now) {
    if (now - board->last_ms < board->ticks_per_ms) {
        return;
    }
    board->last_ms += board->ticks_per_ms;
    if (now - board->last_ms >= board->ticks_per_ms) {
        /* A late step is not made up for: two steps at once would be steeper than the ramp limit. */
        board->last_ms = now;
    }
    collect_analog(board, now);
    for (uint8_t i = 0; i < board->identity->drives; i++) {
        drive_step(&board->drives[i], i);
    }
    hal_watchdog_kick();
}

static void send_sample(struct board *board) {
    struct sample sample;

    memset(&sample, 0, sizeof sample);
    for (uint8_t i = 0; i < board->identity->meters; i++) {
        hal_meter_read(i, &sample.meters[i]);
    }
    /* Read after the meters, so that no edge is younger than the end of the window. */
    sample.time = hal_ticks();
    collect_analog(board, sample.time);
    stream_close_window(&board->stream, board->ticks_per_ms, sample.time, &sample);
    for (uint8_t i = 0; i < board->identity->drives; i++) {
        sample.applied[i] = board->drives[i].applied;
    }
    sample.state = board->state;
    sample.inputs = hal_inputs();
    sample.events = board->events.newest;
    send_when_idle(board, &sample);
}

void board_poll(struct board *board) {
    safety_watch(board, hal_ticks());
    send_events(board);
    receive(board);
    step_millisecond(board, hal_ticks());
    if (stream_due(&board->stream, board->ticks_per_ms, hal_ticks())) {
        send_sample(board);
    }
}
