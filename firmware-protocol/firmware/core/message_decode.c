#include <string.h>

#include "bytes.h"
#include "limits.h"
#include "message.h"

#define BLOB_WRITE_HEAD 3u

static struct refusal refused(enum refuse_reason reason, int32_t detail) {
    struct refusal made = {reason, detail};
    return made;
}

/* The number of a field, from 1, that is out of its range; 0 is none. */
static struct refusal judged(uint8_t field) {
    return field == 0 ? refused(REFUSE_NOTHING, 0) : refused(REFUSE_OUT_OF_RANGE, field);
}

static uint8_t decode_drive(const uint8_t *payload, uint8_t drives, struct command *command) {
    command->channel = payload[0];
    command->duty = get_u32(payload + 1);
    command->ramp = get_u16(payload + 5);
    if (command->channel >= drives) {
        return 1;
    }
    return command->duty > DUTY_FULL ? 2 : 0;
}

static uint8_t decode_stream(const uint8_t *payload, struct command *command) {
    command->period_ms = get_u16(payload);
    command->kind = payload[2];
    if (command->period_ms > STREAM_PERIOD_MAX_MS) {
        return 1;
    }
    return command->kind > STREAM_SHORT_SAMPLES ? 2 : 0;
}

static uint8_t decode_tighten(const uint8_t *payload, struct command *command) {
    command->limit = payload[0];
    command->value = get_u32(payload + 1);
    if (command->limit >= LIMITS) {
        return 1;
    }
    return limits_in_range(command->limit, command->value) ? 0 : 2;
}

static uint8_t decode_blob_read(const uint8_t *payload, struct command *command) {
    command->blob = payload[0];
    command->offset = get_u16(payload + 1);
    command->count = payload[3];
    if (command->blob >= BLOBS) {
        return 1;
    }
    if (command->offset >= BLOB_BYTES_MAX) {
        return 2;
    }
    return command->count == 0 || command->count > BLOB_READ_MAX ? 3 : 0;
}

static uint8_t decode_blob_write(const struct frame *frame, struct command *command) {
    command->blob = frame->payload[0];
    command->offset = get_u16(frame->payload + 1);
    command->count = (uint8_t)(frame->length - BLOB_WRITE_HEAD);
    command->bytes = frame->payload + BLOB_WRITE_HEAD;
    if (command->blob >= BLOBS) {
        return 1;
    }
    if (command->offset >= BLOB_BYTES_MAX) {
        return 2;
    }
    return command->count > BLOB_BYTES_MAX - command->offset ? 3 : 0;
}

static uint8_t decode_blob_commit(const uint8_t *payload, struct command *command) {
    command->blob = payload[0];
    command->length = get_u16(payload + 1);
    command->crc = get_u16(payload + 3);
    if (command->blob >= BLOBS) {
        return 1;
    }
    return command->length == 0 || command->length > BLOB_BYTES_MAX ? 2 : 0;
}

static uint8_t decode_windows(const uint8_t *payload, struct command *command) {
    command->period_ms = get_u16(payload);
    if (command->period_ms == 0) {
        return 0;
    }
    return command->period_ms < WINDOW_PERIOD_MIN_MS || command->period_ms > WINDOW_PERIOD_MAX_MS ? 1 : 0;
}

static uint8_t decode_dither(const uint8_t *payload, uint8_t drives, struct command *command) {
    command->channel = payload[0];
    command->amplitude = get_u16(payload + 1);
    command->hz = get_u16(payload + 3);
    if (command->channel >= drives) {
        return 1;
    }
    if (command->amplitude > DITHER_AMPLITUDE_MAX) {
        return 2;
    }
    return command->hz < DITHER_MIN_HZ || command->hz > DITHER_MAX_HZ ? 3 : 0;
}

static bool is_known(uint8_t type) {
    return type >= MESSAGE_HELLO && type <= MESSAGE_DITHER;
}

static bool has_its_length(uint8_t type, uint8_t length) {
    switch (type) {
        case MESSAGE_ARM:
        case MESSAGE_BLOB_READ:
            return length == 4;
        case MESSAGE_DRIVE:
            return length == 7;
        case MESSAGE_STREAM:
            return length == 3;
        case MESSAGE_TIGHTEN:
        case MESSAGE_BLOB_COMMIT:
        case MESSAGE_DITHER:
            return length == 5;
        case MESSAGE_EVENTS_FROM:
        case MESSAGE_WINDOWS:
            return length == 2;
        case MESSAGE_BLOB_WRITE:
            return length > BLOB_WRITE_HEAD && length <= BLOB_WRITE_HEAD + BLOB_WRITE_MAX;
        default:
            return length == 0;
    }
}

struct refusal message_decode(const struct frame *frame, uint8_t drives, struct command *command) {
    const uint8_t *const payload = frame->payload;

    memset(command, 0, sizeof *command);
    command->type = frame->type;
    if (!is_known(frame->type)) {
        return refused(REFUSE_UNKNOWN_TYPE, frame->type);
    }
    if (!has_its_length(frame->type, frame->length)) {
        return refused(REFUSE_WRONG_LENGTH, frame->length);
    }
    switch (frame->type) {
        case MESSAGE_ARM:
            command->boot_id = get_u32(payload);
            return judged(0);
        case MESSAGE_DRIVE:
            return judged(decode_drive(payload, drives, command));
        case MESSAGE_STREAM:
            return judged(decode_stream(payload, command));
        case MESSAGE_TIGHTEN:
            return judged(decode_tighten(payload, command));
        case MESSAGE_EVENTS_FROM:
            command->number = get_u16(payload);
            return judged(0);
        case MESSAGE_BLOB_READ:
            return judged(decode_blob_read(payload, command));
        case MESSAGE_BLOB_WRITE:
            return judged(decode_blob_write(frame, command));
        case MESSAGE_BLOB_COMMIT:
            return judged(decode_blob_commit(payload, command));
        case MESSAGE_WINDOWS:
            return judged(decode_windows(payload, command));
        case MESSAGE_DITHER:
            return judged(decode_dither(payload, drives, command));
        default:
            return judged(0);
    }
}
