#include "safety.h"

#include "hal.h"

#define CONTACTOR_PROOF_MS 200u
#define CONVERTER_MS 50u

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
            return STATE_LOCKED;
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
    board->last_reading = now;
    hal_contactor_set(true);
}

static void proven(struct board *board, uint32_t now) {
    board->state = state_after(board->state, PROVEN);
    hal_armed_lamp_set(true);
    event_log_put(&board->events, now, EVENT_ARMED, REASON_NONE, 0);
}

/* Outputs safe. True when the contactor was let go by this, from proving or armed: its opening is then to be proven. */
static bool let_go(struct board *board, enum happening why, uint32_t now) {
    const bool was_live = is_live(board);

    /* Even where the state is safe already: it costs nothing and rights a disturbed port. */
    outputs_safe(board);
    board->state = state_after(board->state, why);
    if (was_live) {
        board->letting_go = true;
        board->contactor_since = now;
    }
    return was_live;
}

void safety_make_safe(struct board *board, enum safe_reason reason, int32_t detail, uint32_t now) {
    if (let_go(board, A_REASON, now)) {
        event_log_put(&board->events, now, EVENT_MADE_SAFE, reason, detail);
    }
}

void safety_lock(struct board *board, uint16_t failed, uint32_t now) {
    const bool was_locked = board->state == STATE_LOCKED;

    board->failed |= failed;
    let_go(board, A_FAULT, now);
    if (!was_locked) {
        event_log_put(&board->events, now, EVENT_LOCKED, REASON_HARDWARE, board->failed);
    }
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
/*
 * Two readings in a row make an input, so after a stall of the board the newest one alone may know better: late is only what
 * it shows too.
 */
static void watch_contactor(struct board *board, uint32_t now) {
    const bool closed = inputs_closed(&board->inputs, INPUT_FEEDBACK);
    const bool late = now - board->contactor_since >= ticks_of(board, CONTACTOR_PROOF_MS);

    if (board->state == STATE_PROVING) {
        if (closed) {
            proven(board, now);
        } else if (late && (board->inputs.last & INPUT_FEEDBACK) == 0) {
            safety_make_safe(board, REASON_CONTACTOR, CONTACTOR_DID_NOT_CLOSE, now);
        }
    } else if (board->state == STATE_ARMED && !closed) {
        safety_make_safe(board, REASON_CONTACTOR, CONTACTOR_OPENED, now);
    } else if (board->letting_go && !closed) {
        board->letting_go = false;
    } else if (board->letting_go && late && (board->inputs.last & INPUT_FEEDBACK) != 0) {
        board->letting_go = false;
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

/* Without new readings the rules about them would go on judging nothing, so that alone is a fault. */
static void watch_converter(struct board *board, const struct analog_sums *taken, uint32_t now) {
    if (taken->count > 0 || board->description->analogs == 0) {
        board->last_reading = now;
    } else if (now - board->last_reading >= ticks_of(board, CONVERTER_MS)) {
        safety_lock(board, TEST_CONVERTER, now);
    }
}

void safety_watch_readings(struct board *board, const struct analog_sums *taken, uint32_t now) {
    if (is_live(board)) {
        const struct watched at = watched_now(board, now);
        judge(board, watch_readings(&board->watch, &at, taken), now);
    }
    if (is_live(board)) {
        watch_converter(board, taken, now);
    }
}
