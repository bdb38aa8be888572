#include "commands.h"

#include "hal.h"
#include "limits.h"
#include "safety.h"
#include "self_test.h"
#include "send.h"
#include "windows.h"

/* How a command was met. */
enum outcome {
    ANSWER,   /* acknowledge or refuse, as the refusal says */
    ANSWERED, /* with a message of its own */
    LATER,    /* answered when it is done */
    UNHEARD   /* neither obeyed nor answered */
};

struct met {
    enum outcome outcome;
    struct refusal refusal;
};

static struct met as(enum outcome outcome) {
    struct met met = {outcome, {REFUSE_NOTHING, 0}};
    return met;
}

static struct met refused(enum refuse_reason reason, int32_t detail) {
    struct met met = {ANSWER, {reason, detail}};
    return met;
}

/* Each command checks in the order of the protocol: boot id, locked, state, busy, inputs, contactor. */

static struct met arm(struct board *board, const struct command *command) {
    const uint8_t inputs = board->inputs.agreed;

    if (command->boot_id != board->description->boot_id) {
        return refused(REFUSE_WRONG_BOOT_ID, 0);
    }
    if (board->state == STATE_LOCKED) {
        return refused(REFUSE_LOCKED, board->failed);
    }
    if (board->state != STATE_SAFE) {
        return as(ANSWER);
    }
    if (board->testing) {
        return refused(REFUSE_BUSY, 0);
    }
    if (!inputs_closed(&board->inputs, INPUTS_WATCHED)) {
        return refused(REFUSE_INPUT_OPEN, inputs);
    }
    if (inputs_closed(&board->inputs, INPUT_FEEDBACK)) {
        return refused(REFUSE_CONTACTOR, inputs);
    }
    if (!event_log_has_room(&board->events, EVENTS_OF_ONE_ARMING)) {
        /* Too many events wait for the line: left unanswered, and the host sends it again. */
        return as(UNHEARD);
    }
    safety_arm(board, hal_ticks());
    return as(ANSWER);
}

/* Nothing to refuse where the board is armed. */
static struct met unless_armed(const struct board *board) {
    if (board->state == STATE_LOCKED) {
        return refused(REFUSE_LOCKED, board->failed);
    }
    return board->state == STATE_ARMED ? as(ANSWER) : refused(REFUSE_NOT_ARMED, board->state);
}

/* Nothing to refuse where the board is safe or locked. */
static struct met unless_at_rest(const struct board *board) {
    const bool at_rest = board->state == STATE_SAFE || board->state == STATE_LOCKED;
    return at_rest ? as(ANSWER) : refused(REFUSE_NOT_SAFE, board->state);
}

static struct met drive(struct board *board, const struct command *command) {
    const struct met met = unless_armed(board);
    if (met.refusal.reason == REFUSE_NOTHING) {
        drive_aim(&board->drives[command->channel], command->duty, command->ramp, board->description->ramp_limit);
    }
    return met;
}

static struct met dither(struct board *board, const struct command *command) {
    const struct met met = unless_armed(board);
    if (met.refusal.reason == REFUSE_NOTHING) {
        const uint32_t half_wave = board->description->tick_hz / (2u * (uint32_t)command->hz);
        drive_dither(&board->drives[command->channel], command->channel, command->amplitude, half_wave, hal_ticks());
    }
    return met;
}

static struct met tighten(struct board *board, const struct command *command) {
    uint32_t *const limits = board->description->limits;
    if (!limits_tighten(limits, command->limit, command->value)) {
        return refused(REFUSE_WOULD_WIDEN, (int32_t)limits[command->limit]);
    }
    send_limits(board);
    return as(ANSWERED);
}

static struct met events_from(struct board *board, const struct command *command) {
    if (board->owed_events.waits) {
        return refused(REFUSE_BUSY, 0);
    }
    event_log_repeat(&board->events, command->number);
    return as(LATER);
}

static struct met self_test(struct board *board) {
    const struct met met = unless_at_rest(board);
    if (met.refusal.reason != REFUSE_NOTHING) {
        return met;
    }
    /* It may end in one event, which must find its place. */
    if (board->testing || !event_log_has_room(&board->events, 1)) {
        return refused(REFUSE_BUSY, 0);
    }
    self_test_begin(board);
    return as(ANSWERED);
}

static struct met blob_write(struct board *board, const struct command *command) {
    const struct met met = unless_at_rest(board);
    if (met.refusal.reason != REFUSE_NOTHING) {
        return met;
    }
    if (blobs_busy(&board->blobs)) {
        return refused(REFUSE_BUSY, 0);
    }
    blobs_write(&board->blobs, command->blob, command->offset, command->bytes, command->count);
    return as(LATER);
}

static struct met blob_commit(struct board *board, const struct command *command) {
    const struct met met = unless_at_rest(board);
    if (met.refusal.reason != REFUSE_NOTHING) {
        return met;
    }
    if (blobs_busy(&board->blobs)) {
        return refused(REFUSE_BUSY, 0);
    }
    if (!blobs_commit(&board->blobs, command->blob, command->length, command->crc)) {
        return refused(REFUSE_NOT_STORED, 0);
    }
    return as(blobs_busy(&board->blobs) ? LATER : ANSWER);
}

static struct met carry_out(struct board *board, const struct command *command) {
    switch (command->type) {
        case MESSAGE_HELLO:
            send_identity(board);
            return as(ANSWERED);
        case MESSAGE_ARM:
            return arm(board, command);
        case MESSAGE_DRIVE:
            return drive(board, command);
        case MESSAGE_STREAM:
            stream_set(&board->stream, command->period_ms, command->kind, hal_ticks());
            return as(ANSWER);
        case MESSAGE_MAKE_SAFE: /* obeyed already */
            return as(ANSWER);
        case MESSAGE_READ_LIMITS:
            send_limits(board);
            return as(ANSWERED);
        case MESSAGE_TIGHTEN:
            return tighten(board, command);
        case MESSAGE_EVENTS_FROM:
            return events_from(board, command);
        case MESSAGE_SELF_TEST:
            return self_test(board);
        case MESSAGE_BLOB_READ:
            send_blob_data(board, command->blob, command->offset, command->count);
            return as(ANSWERED);
        case MESSAGE_BLOB_WRITE:
            return blob_write(board, command);
        case MESSAGE_BLOB_COMMIT:
            return blob_commit(board, command);
        case MESSAGE_WINDOWS:
            windows_set(board, command->period_ms, hal_ticks());
            return as(ANSWER);
        case MESSAGE_DITHER:
            return dither(board, command);
        default: /* keep-alive */
            return as(UNHEARD);
    }
}

static void owe(struct owed *owed, const struct frame *frame) {
    owed->waits = true;
    owed->type = frame->type;
    owed->sequence = frame->sequence;
}

static void obey(struct board *board, const struct frame *frame, const struct command *command) {
    const struct met met = carry_out(board, command);

    if (met.outcome == ANSWER) {
        send_answer(board, frame->sequence, frame->type, met.refusal);
    } else if (met.outcome == LATER) {
        owe(command->type == MESSAGE_EVENTS_FROM ? &board->owed_events : &board->owed_blob, frame);
    }
}

void commands_obey(struct board *board, const struct frame *frame) {
    struct command command;

    /* A board's own types come back when the line is looped back; answering them would never end. */
    if (frame->type >= MESSAGE_FROM_BOARD) {
        return;
    }
    /* What a `hello` of another version carries is unknown here; that it asks is enough. */
    if (frame->version != board->version) {
        if (frame->type == MESSAGE_HELLO) {
            send_identity(board);
        }
        return;
    }
    board->last_heard = hal_ticks();
    if (frame->type == MESSAGE_MAKE_SAFE) {
        /* Before anything in it is judged: whatever else it carries, it says `make-safe`. */
        safety_make_safe(board, REASON_HOST_ASKED, 0, hal_ticks());
    }
    const struct refusal refusal = message_decode(frame, board->description->drives, &command);
    if (refusal.reason != REFUSE_NOTHING) {
        send_answer(board, frame->sequence, frame->type, refusal);
        return;
    }
    obey(board, frame, &command);
}
