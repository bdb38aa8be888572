#include "safety.h"

#include "hal.h"

#define CONTACTOR_PROOF_MS 200u

enum happening { ARMING, PROVEN, A_REASON, A_FAULT };

/* The diagram of the states. What is not named here leads nowhere, and nothing leads out of locked. */
static uint8_t state_after(uint8_t state, enum happening what) {
    switch (what) {
        case ARMING:
            return state == STATE_SAFE ? STATE_PROVING : state;
        case PROVEN:
            return state == STATE_PROVING ? STATE_ARMED : state;
        case A_REASON:
            return state == STATE_PROVING || state == STATE_ARMED ? STATE_SAFE : state;
        case A_FAULT:
            return state == STATE_SAFE ? STATE_LOCKED : state;
        default:
            return state;
    }
}

static bool is_live(const struct board *board) {
    return board->state == STATE_PROVING || board->state == STATE_ARMED;
}

static void drives_stop(struct board *board) {
    for (uint8_t i = 0; i < board->description->drives; i++) {
        drive_stop(&board->drives[i], i);
    }
}

static void outputs_safe(struct board *board) {
    drives_stop(board);
    hal_contactor_set(false);
    hal_armed_lamp_set(false);
}

void safety_start(struct board *board) {
    board->state = STATE_SAFE;
    board->letting_go = false;
    outputs_safe(board);
    event_log_put(&board->events, hal_ticks(), EVENT_STARTED, REASON_RESET, board->description->reset_cause);
}

void safety_arm(struct board *board, uint32_t now) {
    /* They are at zero already; said once more, because the contactor is about to close. */
    drives_stop(board);
    watch_start(&board->watch);
    board->state = state_after(board->state, ARMING);
    board->letting_go = false;
    board->contactor_since = now;
    hal_contactor_set(true);
}

static void proven(struct board *board, uint32_t now) {
    board->state = state_after(board->state, PROVEN);
    hal_armed_lamp_set(true);
    event_log_put(&board->events, now, EVENT_ARMED, REASON_NONE, 0);
}

void safety_make_safe(struct board *board, enum safe_reason reason, int32_t detail, uint32_t now) {
    const bool was_live = is_live(board);

    /* Even where the state is safe already: it costs nothing and rights a disturbed port. */
    outputs_safe(board);
    board->state = state_after(board->state, A_REASON);
    if (was_live) {
        board->letting_go = true;
        board->contactor_since = now;
        event_log_put(&board->events, now, EVENT_MADE_SAFE, reason, detail);
    }
}

void safety_lock(struct board *board, uint16_t failed, uint32_t now) {
    board->failed |= failed;
    if (board->state == STATE_LOCKED) {
        return;
    }
    outputs_safe(board);
    board->state = state_after(board->state, A_FAULT);
    board->letting_go = false;
    event_log_put(&board->events, now, EVENT_LOCKED, REASON_HARDWARE, board->failed);
}

static uint32_t ticks_of(const struct board *board, uint32_t ms) {
    return ms * board->ticks_per_ms;
}

void safety_watch_link(struct board *board, uint32_t now) {
    if (is_live(board) && now - board->last_heard >= ticks_of(board, board->description->limits[LIMIT_LINK_MS])) {
        safety_make_safe(board, REASON_LINK_LOST, 0, now);
    }
}

static enum safe_reason open_input(const struct inputs *inputs) {
    if (!inputs_closed(inputs, INPUT_EMERGENCY_STOP)) {
        return REASON_EMERGENCY_STOP;
    }
    if (!inputs_closed(inputs, INPUT_GUARD)) {
        return REASON_GUARD_OPEN;
    }
    if (!inputs_closed(inputs, INPUT_LEVEL)) {
        return REASON_LEVEL_LOW;
    }
    return inputs_closed(inputs, INPUT_OVERRIDE) ? REASON_NONE : REASON_OVERRIDE_IN;
}

/* The auxiliary contact must follow the contactor, both ways, within its time. */
static void watch_contactor(struct board *board, uint32_t now) {
    const bool closed = inputs_closed(&board->inputs, INPUT_FEEDBACK);
    const bool late = now - board->contactor_since >= ticks_of(board, CONTACTOR_PROOF_MS);

    if (board->state == STATE_PROVING) {
        if (closed) {
            proven(board, now);
        } else if (late) {
            safety_make_safe(board, REASON_CONTACTOR, CONTACTOR_DID_NOT_CLOSE, now);
        }
    } else if (board->state == STATE_ARMED && !closed) {
        safety_make_safe(board, REASON_CONTACTOR, CONTACTOR_OPENED, now);
    } else if (board->letting_go && !closed) {
        board->letting_go = false;
    } else if (board->letting_go && late) {
        safety_lock(board, TEST_FEEDBACK, now);
    }
}

static struct watched watched_now(const struct board *board, uint32_t now) {
    struct watched at = {board->description, board->ticks_per_ms, now, 0, false};

    for (uint8_t i = 0; i < board->description->drives; i++) {
        at.driven = at.driven || board->drives[i].level > 0;
    }
    if (board->description->drives > 0) {
        at.first_applied = drive_applied(&board->drives[0], 0);
    }
    return at;
}

static void judge(struct board *board, struct verdict verdict, uint32_t now) {
    if (verdict.reason != REASON_NONE) {
        safety_make_safe(board, verdict.reason, verdict.detail, now);
    }
}

void safety_watch_inputs(struct board *board, uint32_t now, uint32_t ticks) {
    inputs_read(&board->inputs);
    const enum safe_reason reason = open_input(&board->inputs);
    if (is_live(board) && reason != REASON_NONE) {
        safety_make_safe(board, reason, 0, now);
    }
    watch_contactor(board, now);
    if (board->state == STATE_ARMED) {
        const struct watched at = watched_now(board, now);
        judge(board, watch_run_time(&board->watch, &at, ticks), now);
    }
}

void safety_watch_readings(struct board *board, const struct analog_sums *taken, uint32_t now) {
    if (is_live(board)) {
        const struct watched at = watched_now(board, now);
        judge(board, watch_readings(&board->watch, &at, taken), now);
    }
}
