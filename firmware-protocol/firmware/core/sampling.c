#include "sampling.h"

#include <string.h>

#include "analog.h"
#include "hal.h"
#include "safety.h"
#include "send.h"

void sampling_collect(struct board *board, uint32_t now) {
    struct analog_sums taken;

    hal_analog_take(&taken);
    analog_join(&board->stream.window, &taken);
    safety_watch_readings(board, &taken, now);
}

static void read_meters(const struct board *board, struct sample *sample) {
    for (uint8_t i = 0; i < METERS_MAX; i++) {
        if (i < board->description->meters) {
            hal_meter_read(i, &sample->meters[i]);
        } else {
            sample->meters[i].count = EDGES_AT_START;
        }
    }
}

void sampling_send(struct board *board) {
    struct sample sample;

    memset(&sample, 0, sizeof sample);
    read_meters(board, &sample);
    /* Read after the meters, so that no edge is younger than the end of the window. */
    sample.time = hal_ticks();
    sampling_collect(board, sample.time);
    stream_close_window(&board->stream, board->ticks_per_ms, sample.time, &sample);
    for (uint8_t i = 0; i < board->description->drives; i++) {
        sample.applied[i] = drive_applied(&board->drives[i], i);
    }
    sample.state = board->state;
    sample.inputs = board->inputs.agreed;
    sample.events = board->events.newest;
    send_when_idle(board, &sample);
}
