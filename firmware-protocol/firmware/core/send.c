#include "send.h"

#include "hal.h"

#define WIRE(payload_length) ((uint16_t)FRAME_WIRE_MAX((uint16_t)(payload_length)))
/* Samples and windows leave this much of the ring to the next answer, at its longest, and to an event. */
#define KEPT_FOR_ANSWERS ((uint16_t)(1u + WIRE(SAID_MAX) + WIRE(EVENT_LENGTH)))

static bool has_room(uint8_t payload_length, uint16_t kept) {
    return hal_tx_room() >= WIRE(payload_length) + kept;
}

static void send(struct board *board, enum message_type type, struct payload *payload, uint16_t kept) {
    const struct frame frame = {board->version, (uint8_t)type, board->next_sequence++, payload->length,
                                payload_bytes(payload)};

    if (!has_room(payload->length, kept)) {
        return;
    }
    const struct frame_written written = frame_encode(&frame, payload->wire, sizeof payload->wire);
    hal_tx_put(payload->wire, (uint16_t)written.length);
}

void send_delimiter(void) {
    const uint8_t delimiter = 0;

    if (hal_tx_room() > 0) {
        hal_tx_put(&delimiter, 1);
    }
}

void send_identity(struct board *board) {
    struct payload payload;

    send_delimiter();
    message_encode_identity(&board->identity, board->description, &payload);
    send(board, MESSAGE_IDENTITY, &payload, 0);
}

void send_answer(struct board *board, uint16_t sequence, uint8_t type, struct refusal refusal) {
    struct payload payload;

    if (refusal.reason == REFUSE_NOTHING) {
        message_encode_acknowledge(sequence, type, &payload);
        send(board, MESSAGE_ACKNOWLEDGE, &payload, 0);
    } else {
        message_encode_refuse(sequence, type, refusal, &payload);
        send(board, MESSAGE_REFUSE, &payload, 0);
    }
}

void send_limits(struct board *board) {
    struct payload payload;

    message_encode_limits(board->description->limits, &payload);
    send(board, MESSAGE_LIMITS, &payload, 0);
}

void send_self_test(struct board *board, const struct self_test *result) {
    struct payload payload;

    message_encode_self_test(result, &payload);
    send(board, MESSAGE_SELF_TEST_RESULT, &payload, 0);
}

void send_blob_data(struct board *board, uint8_t blob, uint16_t offset, uint8_t count) {
    struct payload payload;
    const uint8_t there = blobs_available(&board->blobs, blob, offset, count);

    uint8_t *const at = message_encode_blob_data(blob, offset, board->blobs.stored[blob].length, there, &payload);
    blobs_read(&board->blobs, blob, offset, there, at);
    send(board, MESSAGE_BLOB_DATA, &payload, 0);
}

void send_events(struct board *board) {
    struct payload payload;
    struct owed *const owed = &board->owed_events;
    const struct refusal nothing = {REFUSE_NOTHING, 0};
    const struct event *event;

    while ((event = event_log_next(&board->events)) != NULL) {
        if (!has_room(EVENT_LENGTH, 0)) {
            return;
        }
        message_encode_event(event, &payload);
        send(board, MESSAGE_EVENT, &payload, 0);
        event_log_advance(&board->events);
    }
    if (owed->waits && has_room(EVENT_LENGTH, 0)) {
        owed->waits = false;
        send_answer(board, owed->sequence, owed->type, nothing);
    }
}

static uint16_t kept_from_samples(const struct board *board) {
    return (uint16_t)(KEPT_FOR_ANSWERS + (board->window_waits ? WIRE(PULSE_WINDOW_LENGTH) : 0u));
}

void send_when_idle(struct board *board, const struct sample *sample) {
    struct payload payload;

    /* Where a sample finds room, every event before it has found some: the room kept is larger than an event. */
    send_events(board);
    if (board->stream.kind == STREAM_SHORT_SAMPLES) {
        message_encode_short_sample(sample, &payload);
        send(board, MESSAGE_SHORT_SAMPLE, &payload, kept_from_samples(board));
    } else {
        message_encode_sample(sample, &payload);
        send(board, MESSAGE_SAMPLE, &payload, kept_from_samples(board));
    }
}

bool send_has_room_for_window(void) {
    return has_room(PULSE_WINDOW_LENGTH, KEPT_FOR_ANSWERS);
}

void send_pulse_window(struct board *board, uint8_t meter, const struct pulse_window *window) {
    struct payload payload;

    message_encode_pulse_window(meter, window, &payload);
    send(board, MESSAGE_PULSE_WINDOW, &payload, KEPT_FOR_ANSWERS);
}
