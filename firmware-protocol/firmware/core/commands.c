#include "commands.h"

#include "hal.h"
#include "safety.h"
#include "send.h"

static const struct refusal taken = {REFUSE_NOTHING, 0};

static struct refusal refused(enum refuse_reason reason, int32_t detail) {
    struct refusal made = {reason, detail};
    return made;
}

/* Room for `armed` and for the `made safe` that will follow, so that neither is ever lost. */
#define EVENTS_OF_ONE_ARMING 2u

static bool may_arm_now(const struct board *board) {
    return board->state == STATE_ARMED || event_queue_has_room(&board->events, EVENTS_OF_ONE_ARMING);
}

static struct refusal arm(struct board *board, const struct command *command) {
    if (command->boot_id != board->identity->boot_id) {
        return refused(REFUSE_WRONG_BOOT_ID, 0);
    }
    if (board->state == STATE_ARMED) {
        return taken;
    }
    const uint8_t inputs = hal_inputs();
    if (inputs != INPUTS_CLOSED) {
        return refused(REFUSE_INPUT_OPEN, inputs);
    }
    safety_arm(board, hal_ticks());
    return taken;
}

static struct refusal drive(struct board *board, const struct command *command) {
    if (board->state != STATE_ARMED) {
        return refused(REFUSE_NOT_ARMED, 0);
    }
    drive_aim(&board->drives[command->channel], command->duty, command->ramp, board->identity->ramp_limit);
    return taken;
}

static struct refusal carry_out(struct board *board, const struct command *command) {
    switch (command->type) {
        case MESSAGE_ARM:
            return arm(board, command);
        case MESSAGE_DRIVE:
            return drive(board, command);
        case MESSAGE_STREAM:
            stream_set(&board->stream, command->period_ms, hal_ticks());
            return taken;
        case MESSAGE_MAKE_SAFE:
            safety_make_safe(board, REASON_HOST_ASKED, 0, hal_ticks());
            return taken;
        default:
            return taken;
    }
}

static void obey(struct board *board, const struct frame *frame, const struct command *command) {
    switch (command->type) {
        case MESSAGE_HELLO:
            send_identity(board);
            return;
        case MESSAGE_KEEP_ALIVE:
            return;
        case MESSAGE_ARM:
            if (!may_arm_now(board)) {
                /* Too many events wait for the line: left unanswered, and the host sends it again. */
                return;
            }
            break;
        default:
            break;
    }
    send_answer(board, frame, carry_out(board, command));
}

void commands_obey(struct board *board, const struct frame *frame) {
    struct command command;

    /* A board's own types come back when the line is looped back; answering them would never end. */
    if (frame->type >= MESSAGE_FROM_BOARD) {
        return;
    }
    if (frame->version != board->version) {
        if (frame->type == MESSAGE_HELLO) {
            send_identity(board);
        }
        return;
    }
    board->last_heard = hal_ticks();
    const struct refusal refusal = message_decode(frame, board->identity->drives, &command);
    if (refusal.reason != REFUSE_NOTHING) {
        send_answer(board, frame, refusal);
        return;
    }
    obey(board, frame, &command);
}
