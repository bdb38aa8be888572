#include "stream.h"

#include <string.h>

#include "analog.h"

void stream_set(struct stream *stream, uint16_t period_ms, uint8_t kind, uint32_t now) {
    stream->kind = kind;
    if (period_ms == stream->period_ms) {
        return;
    }
    stream->period_ms = period_ms;
    stream->window_began = now;
    analog_clear(&stream->window);
}

bool stream_due(const struct stream *stream, uint32_t ticks_per_ms, uint32_t now) {
    return stream->period_ms != 0 && now - stream->window_began >= stream->period_ms * ticks_per_ms;
}

void stream_close_window(struct stream *stream, uint32_t ticks_per_ms, uint32_t now, struct sample *sample) {
    const uint32_t period = stream->period_ms * ticks_per_ms;

    sample->conversions = stream->window.count;
    if (stream->window.count > 0) {
        analog_read(&stream->window, stream->last);
    }
    memcpy(sample->analogs, stream->last, sizeof sample->analogs);
    analog_clear(&stream->window);

    /* The grid of the windows does not drift, but a whole period too late is not made up for. */
    stream->window_began += period;
    if (now - stream->window_began >= period) {
        stream->window_began = now;
    }
}
