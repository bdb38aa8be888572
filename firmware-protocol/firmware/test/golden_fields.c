#include "golden_fields.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "check.h"

const char *field_text(const char *fields, const char *name) {
    static char text[160];
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

uint64_t field_long(const char *fields, const char *name) {
    const char *const text = field_text(fields, name);
    char *end;
    const unsigned long long value = strtoull(text, &end, 10);
    CHECK(end != text && *end == '\0');
    return value;
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
    read_unique_id(fields, &identity);
    read_firmware(fields, &identity);
    return identity;
}

struct description description_of(const char *fields) {
    struct description board;
    memset(&board, 0, sizeof board);
    board.boot_id = field_number(fields, "bootId");
    board.reset_cause = (uint8_t)field_number(fields, "resetCause");
    board.meters = (uint8_t)field_number(fields, "meters");
    board.drives = (uint8_t)field_number(fields, "drives");
    board.analogs = (uint8_t)field_number(fields, "analogs");
    board.tick_hz = field_number(fields, "tickHz");
    for (unsigned i = 0; i < DRIVES_MAX; i++) {
        board.pwm_hz[i] = (uint16_t)field_numbered(fields, "pwmHz", i);
    }
    for (unsigned i = 0; i < ANALOGS_MAX; i++) {
        board.roles[i] = (uint8_t)field_numbered(fields, "role", i);
    }
    const char *const kind = field_text(fields, "kind");
    memcpy(board.kind, kind, strnlen(kind, sizeof board.kind));
    return board;
}

struct pulse_window pulse_window_of(const char *fields) {
    struct pulse_window window;
    window.begin = field_number(fields, "begin");
    window.end = field_number(fields, "end");
    window.edges = (uint16_t)field_number(fields, "edges");
    window.first_edge = field_number(fields, "first");
    window.last_edge = field_number(fields, "last");
    window.intervals = (uint16_t)field_number(fields, "intervals");
    window.sum = field_number(fields, "sum");
    window.squares = field_long(fields, "squares");
    window.lagged = field_long(fields, "lagged");
    window.least = field_number(fields, "least");
    window.most = field_number(fields, "most");
    window.long_ones = (uint16_t)field_number(fields, "long");
    window.short_ones = (uint16_t)field_number(fields, "short");
    window.reference = field_number(fields, "reference");
    return window;
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
