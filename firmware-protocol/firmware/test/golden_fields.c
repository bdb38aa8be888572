#include "golden_fields.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "check.h"

const char *field_text(const char *fields, const char *name) {
    static char text[64];
    const size_t name_length = strlen(name);
    const char *at = fields;

    text[0] = '\0';
    while (at != NULL) {
        if (strncmp(at, name, name_length) == 0 && at[name_length] == '=') {
            snprintf(text, sizeof text, "%.*s", (int)strcspn(at + name_length + 1, " "), at + name_length + 1);
            break;
        }
        at = strchr(at, ' ');
        at = at == NULL ? NULL : at + 1;
    }
    return text;
}

uint32_t field_number(const char *fields, const char *name) {
    const char *const text = field_text(fields, name);
    char *end;
    const long long value = strtoll(text, &end, 10);
    if (end == text || *end != '\0') {
        printf("no number in the field %s\n", name);
        CHECK(false);
    }
    return (uint32_t)value;
}

uint32_t field_numbered(const char *fields, const char *name, unsigned number) {
    char whole[32];
    snprintf(whole, sizeof whole, "%s%u", name, number);
    return field_number(fields, whole);
}

static void read_unique_id(const char *fields, struct identity *identity) {
    const char *const hex = field_text(fields, "uniqueId");
    CHECK_EQUAL(2u * sizeof identity->unique_id, strlen(hex));
    for (size_t i = 0; i < sizeof identity->unique_id; i++) {
        unsigned value = 0;
        CHECK_EQUAL(1, sscanf(hex + 2 * i, "%2x", &value));
        identity->unique_id[i] = (uint8_t)value;
    }
}

static void read_firmware(const char *fields, struct identity *identity) {
    unsigned major = 0;
    unsigned minor = 0;
    unsigned patch = 0;
    CHECK_EQUAL(3, sscanf(field_text(fields, "firmware"), "%u.%u.%u", &major, &minor, &patch));
    identity->firmware_major = (uint8_t)major;
    identity->firmware_minor = (uint8_t)minor;
    identity->firmware_patch = (uint8_t)patch;
}

struct identity identity_of(const char *fields) {
    struct identity identity;
    memset(&identity, 0, sizeof identity);
    read_unique_id(fields, &identity);
    read_firmware(fields, &identity);
    identity.boot_id = field_number(fields, "bootId");
    identity.reset_cause = (uint8_t)field_number(fields, "resetCause");
    identity.meters = (uint8_t)field_number(fields, "meters");
    identity.drives = (uint8_t)field_number(fields, "drives");
    identity.analogs = (uint8_t)field_number(fields, "analogs");
    identity.tick_hz = field_number(fields, "tickHz");
    for (unsigned i = 0; i < DRIVES_MAX; i++) {
        identity.pwm_hz[i] = (uint16_t)field_numbered(fields, "pwmHz", i);
    }
    identity.ramp_limit = (uint16_t)field_number(fields, "rampLimit");
    identity.link_timeout_ms = (uint16_t)field_number(fields, "linkTimeoutMs");
    identity.current_channel = (uint8_t)field_number(fields, "currentChannel");
    identity.over_current_limit = (uint16_t)field_number(fields, "overCurrentLimit");
    identity.over_current_ms = (uint16_t)field_number(fields, "overCurrentMs");
    const char *const kind = field_text(fields, "kind");
    memcpy(identity.kind, kind, strnlen(kind, sizeof identity.kind));
    return identity;
}

struct sample sample_of(const char *fields) {
    struct sample sample;
    memset(&sample, 0, sizeof sample);
    sample.time = field_number(fields, "time");
    for (unsigned i = 0; i < METERS_MAX; i++) {
        sample.meters[i].count = field_numbered(fields, "count", i);
        sample.meters[i].last_edge = field_numbered(fields, "edge", i);
    }
    for (unsigned i = 0; i < ANALOGS_MAX; i++) {
        sample.analogs[i].mean = (uint16_t)field_numbered(fields, "mean", i);
        sample.analogs[i].min = (uint16_t)field_numbered(fields, "min", i);
        sample.analogs[i].max = (uint16_t)field_numbered(fields, "max", i);
    }
    sample.conversions = (uint16_t)field_number(fields, "conversions");
    for (unsigned i = 0; i < DRIVES_MAX; i++) {
        sample.applied[i] = field_numbered(fields, "applied", i);
    }
    sample.state = (uint8_t)field_number(fields, "state");
    sample.inputs = (uint8_t)field_number(fields, "inputs");
    sample.events = (uint16_t)field_number(fields, "events");
    return sample;
}

struct event event_of(const char *fields) {
    struct event event;
    event.number = (uint16_t)field_number(fields, "number");
    event.time = field_number(fields, "time");
    event.kind = (uint8_t)field_number(fields, "kind");
    event.reason = (uint8_t)field_number(fields, "reason");
    event.detail = (int32_t)field_number(fields, "detail");
    return event;
}
