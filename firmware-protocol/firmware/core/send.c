#include "send.h"

#include "hal.h"

#define EVENT_LENGTH 12u
#define IDENTITY_LENGTH 44u
/* A sample leaves this much of the ring to the next answer, at its longest, and to an event. */
#define KEPT_FROM_SAMPLES ((uint16_t)(1u + FRAME_WIRE_MAX(IDENTITY_LENGTH) + FRAME_WIRE_MAX(EVENT_LENGTH)))

static bool has_room(uint8_t payload_length, uint16_t kept) {
    return hal_tx_room() >= FRAME_WIRE_MAX((uint16_t)payload_length) + kept;
}

static void send(struct board *board, enum message_type type, const struct payload *payload, uint16_t kept) {
    const struct frame frame = {board->version, (uint8_t)type, board->next_sequence++, payload->length, payload->bytes};
    uint8_t wire[FRAME_WIRE_MAX(FRAME_PAYLOAD_MAX)];

    if (!has_room(payload->length, kept)) {
        return;
    }
    const struct frame_written written = frame_encode(&frame, wire, sizeof wire);
    hal_tx_put(wire, (uint16_t)written.length);
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
    message_encode_identity(board->identity, &payload);
    send(board, MESSAGE_IDENTITY, &payload, 0);
}

void send_answer(struct board *board, const struct frame *frame, struct refusal refusal) {
    struct payload payload;

    if (refusal.reason == REFUSE_NOTHING) {
        message_encode_acknowledge(frame->sequence, frame->type, &payload);
        send(board, MESSAGE_ACKNOWLEDGE, &payload, 0);
    } else {
        message_encode_refuse(frame->sequence, frame->type, refusal, &payload);
        send(board, MESSAGE_REFUSE, &payload, 0);
    }
}

void send_events(struct board *board) {
    struct payload payload;
    const struct event *event = event_queue_first(&board->events);

    while (event != NULL && has_room(EVENT_LENGTH, 0)) {
        message_encode_event(event, &payload);
        send(board, MESSAGE_EVENT, &payload, 0);
        event_queue_remove_first(&board->events);
        event = event_queue_first(&board->events);
    }
}

void send_when_idle(struct board *board, const struct sample *sample) {
    struct payload payload;

    /* Where a sample finds room, every event before it has found some: the room kept is larger than an event. */
    send_events(board);
    message_encode_sample(sample, &payload);
    send(board, MESSAGE_SAMPLE, &payload, KEPT_FROM_SAMPLES);
}
