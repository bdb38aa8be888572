#include <string.h>

#include "bytes.h"
#include "message.h"

#define LENGTH_UNKNOWN 0xFFu

static struct refusal refused(enum refuse_reason reason, int32_t detail) {
    struct refusal made = {reason, detail};
    return made;
}

static uint8_t length_of(uint8_t type) {
    switch (type) {
        case MESSAGE_HELLO:
        case MESSAGE_KEEP_ALIVE:
        case MESSAGE_MAKE_SAFE:
            return 0;
        case MESSAGE_ARM:
            return 4;
        case MESSAGE_DRIVE:
            return 7;
        case MESSAGE_STREAM:
            return 2;
        default:
            return LENGTH_UNKNOWN;
    }
}

static struct refusal decode_drive(const uint8_t *payload, uint8_t drives, struct command *command) {
    command->channel = payload[0];
    command->duty = get_u32(payload + 1);
    command->ramp = get_u16(payload + 5);
    if (command->channel >= drives) {
        return refused(REFUSE_OUT_OF_RANGE, 1);
    }
    if (command->duty > DUTY_FULL) {
        return refused(REFUSE_OUT_OF_RANGE, 2);
    }
    return refused(REFUSE_NOTHING, 0);
}

static struct refusal decode_stream(const uint8_t *payload, struct command *command) {
    const uint16_t period_ms = get_u16(payload);
    command->period_ms = period_ms;
    if (period_ms != 0 && (period_ms < STREAM_PERIOD_MIN_MS || period_ms > STREAM_PERIOD_MAX_MS)) {
        return refused(REFUSE_OUT_OF_RANGE, 1);
    }
    return refused(REFUSE_NOTHING, 0);
}

struct refusal message_decode(const struct frame *frame, uint8_t drives, struct command *command) {
    const uint8_t wanted = length_of(frame->type);

    memset(command, 0, sizeof *command);
    command->type = frame->type;
    if (wanted == LENGTH_UNKNOWN) {
        return refused(REFUSE_UNKNOWN_TYPE, frame->type);
    }
    if (frame->length != wanted) {
        return refused(REFUSE_WRONG_LENGTH, frame->length);
    }
    switch (frame->type) {
        case MESSAGE_ARM:
            command->boot_id = get_u32(frame->payload);
            break;
        case MESSAGE_DRIVE:
            return decode_drive(frame->payload, drives, command);
        case MESSAGE_STREAM:
            return decode_stream(frame->payload, command);
        default:
            break;
    }
    return refused(REFUSE_NOTHING, 0);
}
