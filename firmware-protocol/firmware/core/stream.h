/* The stream of samples: windows of a fixed period, closed by board time. */
#ifndef STAND_STREAM_H
#define STAND_STREAM_H

#include <stdbool.h>
#include <stdint.h>

#include "message.h"

struct stream {
    uint16_t period_ms; /* 0: no samples */
    uint8_t kind;       /* enum stream_kind */
    uint32_t window_began;
    struct analog_sums window;
    struct analog_reading last[ANALOGS_MAX]; /* of the last window that held a reading */
};

/* The same period and kind again change nothing; another period begins a new window. */
void stream_set(struct stream *stream, uint16_t period_ms, uint8_t kind, uint32_t now);

/* True when the window is over. */
bool stream_due(const struct stream *stream, uint32_t ticks_per_ms, uint32_t now);

/* Reads the analogue part of the window into the sample and begins the next window. */
void stream_close_window(struct stream *stream, uint32_t ticks_per_ms, uint32_t now, struct sample *sample);

#endif
