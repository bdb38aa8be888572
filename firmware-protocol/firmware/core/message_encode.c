#include <string.h>

#include "bytes.h"
#include "message.h"

static void finish(struct payload *payload, const uint8_t *end) {
    payload->length = (uint8_t)(end - payload_bytes(payload));
}

static uint8_t *put_bytes(uint8_t *at, const uint8_t *bytes, uint8_t length) {
    memcpy(at, bytes, length);
    return at + length;
}

void message_encode_identity(const struct identity *identity, const struct description *board,
                             struct payload *payload) {
    uint8_t *at = put_bytes(payload_bytes(payload), identity->unique_id, sizeof identity->unique_id);
    at = put_u8(at, identity->firmware_major);
    at = put_u8(at, identity->firmware_minor);
    at = put_u8(at, identity->firmware_patch);
    at = put_u32(at, board->boot_id);
    at = put_u8(at, board->reset_cause);
    at = put_u8(at, board->meters);
    at = put_u8(at, board->drives);
    at = put_u8(at, board->analogs);
    at = put_u32(at, board->tick_hz);
    for (uint8_t i = 0; i < DRIVES_MAX; i++) {
        at = put_u16(at, board->pwm_hz[i]);
    }
    at = put_bytes(at, board->roles, sizeof board->roles);
    finish(payload, put_bytes(at, board->kind, sizeof board->kind));
}

void message_encode_acknowledge(uint16_t sequence, uint8_t type, struct payload *payload) {
    finish(payload, put_u8(put_u16(payload_bytes(payload), sequence), type));
}

void message_encode_refuse(uint16_t sequence, uint8_t type, struct refusal refusal, struct payload *payload) {
    uint8_t *at = put_u8(put_u16(payload_bytes(payload), sequence), type);
    at = put_u8(at, (uint8_t)refusal.reason);
    finish(payload, put_i32(at, refusal.detail));
}

void message_encode_sample(const struct sample *sample, struct payload *payload) {
    uint8_t *at = put_u32(payload_bytes(payload), sample->time);
    for (uint8_t i = 0; i < METERS_MAX; i++) {
        at = put_u32(at, sample->meters[i].count);
        at = put_u32(at, sample->meters[i].last_edge);
    }
    for (uint8_t i = 0; i < ANALOGS_MAX; i++) {
        at = put_u16(at, sample->analogs[i].mean);
        at = put_u16(at, sample->analogs[i].min);
        at = put_u16(at, sample->analogs[i].max);
    }
    at = put_u16(at, sample->conversions);
    for (uint8_t i = 0; i < DRIVES_MAX; i++) {
        at = put_u32(at, sample->applied[i]);
    }
    at = put_u8(at, sample->state);
    at = put_u8(at, sample->inputs);
    finish(payload, put_u16(at, sample->events));
}

static uint16_t short_duty(uint32_t duty) {
    return duty > UINT16_MAX ? UINT16_MAX : (uint16_t)duty;
}

void message_encode_short_sample(const struct sample *sample, struct payload *payload) {
    uint8_t *at = put_u32(payload_bytes(payload), sample->time);
    for (uint8_t i = 0; i < METERS_MAX; i++) {
        at = put_u16(at, (uint16_t)(sample->meters[i].count & 0xFFFFu));
        at = put_u32(at, sample->meters[i].last_edge);
    }
    for (uint8_t i = 0; i < ANALOGS_MAX; i++) {
        at = put_u16(at, sample->analogs[i].mean);
    }
    for (uint8_t i = 0; i < DRIVES_MAX; i++) {
        at = put_u16(at, short_duty(sample->applied[i]));
    }
    at = put_u8(at, sample->state);
    finish(payload, put_u8(at, sample->inputs));
}

void message_encode_event(const struct event *event, struct payload *payload) {
    uint8_t *at = put_u16(payload_bytes(payload), event->number);
    at = put_u32(at, event->time);
    at = put_u8(at, event->kind);
    at = put_u8(at, event->reason);
    finish(payload, put_i32(at, event->detail));
}

void message_encode_limits(const uint32_t limits[LIMITS], struct payload *payload) {
    uint8_t *at = payload_bytes(payload);
    for (uint8_t i = 0; i < LIMITS; i++) {
        at = put_u32(at, limits[i]);
    }
    finish(payload, at);
}

void message_encode_self_test(const struct self_test *result, struct payload *payload) {
    finish(payload, put_u16(put_u16(payload_bytes(payload), result->tried), result->failed));
}

uint8_t *message_encode_blob_data(uint8_t blob, uint16_t offset, uint16_t total, uint8_t count,
                                  struct payload *payload) {
    uint8_t *const at = put_u16(put_u16(put_u8(payload_bytes(payload), blob), offset), total);
    finish(payload, at + count);
    return at;
}

void message_encode_pulse_window(uint8_t meter, const struct pulse_window *window, struct payload *payload) {
    uint8_t *at = put_u8(payload_bytes(payload), meter);
    at = put_u32(at, window->begin);
    at = put_u32(at, window->end);
    at = put_u16(at, window->edges);
    at = put_u32(at, window->first_edge);
    at = put_u32(at, window->last_edge);
    at = put_u16(at, window->intervals);
    at = put_u32(at, window->sum);
    at = put_u64(at, window->squares);
    at = put_u64(at, window->lagged);
    at = put_u32(at, window->least);
    at = put_u32(at, window->most);
    at = put_u16(at, window->long_ones);
    at = put_u16(at, window->short_ones);
    finish(payload, put_u32(at, window->reference));
}
