#include "windows.h"

#include "hal.h"
#include "send.h"

/* So many edges are looked at before the rest of the work has its turn again. */
#define EDGES_PER_POLL 8u

void windows_set(struct board *board, uint16_t period_ms, uint32_t now) {
    if (period_ms == board->window_ms) {
        return;
    }
    board->window_ms = period_ms;
    for (uint8_t i = 0; i < board->description->meters; i++) {
        pulse_meter_begin(&board->pulse_meters[i], now);
    }
}

/* While the line has no room, the window and the edges behind it wait. */
static void close_window(struct board *board, uint8_t number, uint32_t end) {
    struct pulse_window closed;

    if (!send_has_room_for_window()) {
        board->window_waits = true;
        return;
    }
    pulse_meter_close(&board->pulse_meters[number], end, &closed);
    send_pulse_window(board, number, &closed);
}

static bool is_at_or_after(uint32_t time, uint32_t mark) {
    return time - mark < 0x80000000ul;
}

static void poll_meter(struct board *board, uint8_t number, uint32_t now) {
    struct pulse_meter *const meter = &board->pulse_meters[number];
    const uint32_t end = meter->window.begin + board->window_ms * board->ticks_per_ms;
    struct edge edge;
    uint8_t taken = 0;

    pulse_meter_age(meter, now);
    while (hal_edge_first(number, &edge)) {
        if (board->window_ms != 0 && is_at_or_after(edge.time, end)) {
            close_window(board, number, end);
            return;
        }
        if (taken++ == EDGES_PER_POLL) {
            return;
        }
        pulse_meter_take(meter, &edge);
        hal_edge_remove_first(number);
    }
    /* `now` was read before the ring was found empty, so no edge of the window is still on its way. */
    if (board->window_ms != 0 && is_at_or_after(now, end)) {
        close_window(board, number, end);
    }
}

void windows_poll(struct board *board, uint32_t now) {
    board->window_waits = false;
    for (uint8_t i = 0; i < board->description->meters; i++) {
        poll_meter(board, i, now);
    }
}
