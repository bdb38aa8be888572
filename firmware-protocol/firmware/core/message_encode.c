#include <string.h>

#include "bytes.h"
#include "message.h"

static void finish(struct payload *payload, const uint8_t *end) {
    payload->length = (uint8_t)(end - payload->bytes);
}

static uint8_t *put_bytes(uint8_t *at, const uint8_t *bytes, uint8_t length) {
    memcpy(at, bytes, length);
    return at + length;
}

void message_encode_identity(const struct identity *identity, struct payload *payload) {
    uint8_t *at = put_bytes(payload->bytes, identity->unique_id, sizeof identity->unique_id);
    at = put_u8(at, identity->firmware_major);
    at = put_u8(at, identity->firmware_minor);
    at = put_u8(at, identity->firmware_patch);
    at = put_u32(at, identity->boot_id);
    at = put_u8(at, identity->reset_cause);
    at = put_u8(at, identity->meters);
    at = put_u8(at, identity->drives);
    at = put_u8(at, identity->analogs);
    at = put_u32(at, identity->tick_hz);
    for (uint8_t i = 0; i < DRIVES_MAX; i++) {
        at = put_u16(at, identity->pwm_hz[i]);
    }
    at = put_u16(at, identity->ramp_limit);
    at = put_u16(at, identity->link_timeout_ms);
    at = put_u8(at, identity->current_channel);
    at = put_u16(at, identity->over_current_limit);
    at = put_u16(at, identity->over_current_ms);
    at = put_bytes(at, identity->kind, sizeof identity->kind);
    finish(payload, at);
}

void message_encode_acknowledge(uint16_t sequence, uint8_t type, struct payload *payload) {
    finish(payload, put_u8(put_u16(payload->bytes, sequence), type));
}

void message_encode_refuse(uint16_t sequence, uint8_t type, struct refusal refusal, struct payload *payload) {
    uint8_t *at = put_u8(put_u16(payload->bytes, sequence), type);
    at = put_u8(at, (uint8_t)refusal.reason);
    finish(payload, put_i32(at, refusal.detail));
}

void message_encode_sample(const struct sample *sample, struct payload *payload) {
    uint8_t *at = put_u32(payload->bytes, sample->time);
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

void message_encode_event(const struct event *event, struct payload *payload) {
    uint8_t *at = put_u16(payload->bytes, event->number);
    at = put_u32(at, event->time);
    at = put_u8(at, event->kind);
    at = put_u8(at, event->reason);
    finish(payload, put_i32(at, event->detail));
}
