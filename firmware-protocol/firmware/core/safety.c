#include "safety.h"

#include "hal.h"

static void outputs_safe(struct board *board) {
    for (uint8_t i = 0; i < board->identity->drives; i++) {
        drive_stop(&board->drives[i], i);
    }
    hal_contactor_set(false);
    hal_armed_lamp_set(false);
}

void safety_start(struct board *board) {
    board->state = STATE_SAFE;
    outputs_safe(board);
    event_queue_put(&board->events, hal_ticks(), EVENT_STARTED, REASON_RESET, board->identity->reset_cause);
}

void safety_arm(struct board *board, uint32_t now) {
    /* They are at zero already; said once more, because the contactor is about to close. */
    for (uint8_t i = 0; i < board->identity->drives; i++) {
        drive_stop(&board->drives[i], i);
    }
    over_current_clear(&board->over_current);
    board->state = STATE_ARMED;
    hal_armed_lamp_set(true);
    hal_contactor_set(true);
    event_queue_put(&board->events, now, EVENT_ARMED, REASON_NONE, 0);
}

void safety_make_safe(struct board *board, enum safe_reason reason, int32_t detail, uint32_t now) {
    /* Even where the state is safe already: it costs nothing and rights a disturbed port. */
    outputs_safe(board);
    if (board->state == STATE_ARMED) {
        board->state = STATE_SAFE;
        event_queue_put(&board->events, now, EVENT_MADE_SAFE, reason, detail);
    }
}

void safety_watch(struct board *board, uint32_t now) {
    if (board->state != STATE_ARMED) {
        return;
    }
    const uint8_t inputs = hal_inputs();
    if ((inputs & INPUT_EMERGENCY_STOP) == 0) {
        safety_make_safe(board, REASON_EMERGENCY_STOP, 0, now);
    } else if ((inputs & INPUT_GUARD) == 0) {
        safety_make_safe(board, REASON_GUARD_OPEN, 0, now);
    } else if (now - board->last_heard >= board->identity->link_timeout_ms * board->ticks_per_ms) {
        safety_make_safe(board, REASON_LINK_LOST, 0, now);
    }
}

void safety_watch_current(struct board *board, const struct analog_sums *taken, uint32_t now) {
    if (board->state == STATE_ARMED
        && over_current_watch(&board->over_current, board->identity, taken, now)) {
        safety_make_safe(board, REASON_OVER_CURRENT, board->over_current.highest, now);
    }
}
