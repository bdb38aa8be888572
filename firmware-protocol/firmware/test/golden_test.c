/* The golden frames: computed by another encoder, so that the core is not checked against itself. */
#include "check.h"
#include "fixture.h"
#include "golden_fields.h"
#include "message.h"
#include "suites.h"

#include <stdio.h>
#include <string.h>

static unsigned good_from_host;
static unsigned good_from_board;
static unsigned dropped;
static unsigned foreign;
static unsigned refused;

static enum frame_outcome receive(const struct hex_bytes *wire, struct frame *frame) {
    static struct frame_receiver receiver;
    enum frame_outcome last = FRAME_NONE;

    frame_receiver_start(&receiver);
    frame_receive(&receiver, 0, frame);
    for (size_t i = 0; i < wire->length; i++) {
        CHECK_EQUAL(FRAME_NONE, last);
        last = frame_receive(&receiver, wire->bytes[i], frame);
    }
    return last;
}

static uint8_t type_named(const char *name) {
    static const struct {
        const char *name;
        uint8_t type;
    } types[] = {
        {"hello", MESSAGE_HELLO},
        {"arm", MESSAGE_ARM},
        {"drive", MESSAGE_DRIVE},
        {"stream", MESSAGE_STREAM},
        {"keep-alive", MESSAGE_KEEP_ALIVE},
        {"make-safe", MESSAGE_MAKE_SAFE},
        {"read-limits", MESSAGE_READ_LIMITS},
        {"tighten", MESSAGE_TIGHTEN},
        {"events-from", MESSAGE_EVENTS_FROM},
        {"self-test", MESSAGE_SELF_TEST},
        {"blob-read", MESSAGE_BLOB_READ},
        {"blob-write", MESSAGE_BLOB_WRITE},
        {"blob-commit", MESSAGE_BLOB_COMMIT},
        {"windows", MESSAGE_WINDOWS},
        {"dither", MESSAGE_DITHER},
        {"identity", MESSAGE_IDENTITY},
        {"acknowledge", MESSAGE_ACKNOWLEDGE},
        {"refuse", MESSAGE_REFUSE},
        {"sample", MESSAGE_SAMPLE},
        {"event", MESSAGE_EVENT},
        {"limits", MESSAGE_LIMITS},
        {"self-test-result", MESSAGE_SELF_TEST_RESULT},
        {"blob-data", MESSAGE_BLOB_DATA},
        {"short-sample", MESSAGE_SHORT_SAMPLE},
        {"pulse-window", MESSAGE_PULSE_WINDOW},
    };
    for (size_t i = 0; i < sizeof types / sizeof *types; i++) {
        if (strcmp(types[i].name, name) == 0) {
            return types[i].type;
        }
    }
    CHECK(false);
    return 0;
}

/* The hexadecimal digits of a field called `bytes`, without blanks. */
static uint8_t bytes_of(const char *fields, uint8_t *bytes) {
    const char *const text = field_text(fields, "bytes");
    const uint8_t count = (uint8_t)(strlen(text) / 2u);
    for (uint8_t i = 0; i < count; i++) {
        unsigned value = 0;
        CHECK_EQUAL(1, sscanf(text + 2 * i, "%2x", &value));
        bytes[i] = (uint8_t)value;
    }
    return count;
}

static void check_blob_write(const struct command *command, const char *fields) {
    uint8_t bytes[BLOB_WRITE_MAX];
    CHECK_EQUAL(field_number(fields, "blob"), command->blob);
    CHECK_EQUAL(field_number(fields, "offset"), command->offset);
    const uint8_t count = bytes_of(fields, bytes);
    CHECK_BYTES(bytes, count, command->bytes, command->count);
}

static void check_fields(const struct command *command, const char *fields) {
    switch (command->type) {
        case MESSAGE_ARM:
            CHECK_EQUAL(field_number(fields, "bootId"), command->boot_id);
            break;
        case MESSAGE_DRIVE:
            CHECK_EQUAL(field_number(fields, "channel"), command->channel);
            CHECK_EQUAL(field_number(fields, "duty"), command->duty);
            CHECK_EQUAL(field_number(fields, "ramp"), command->ramp);
            break;
        case MESSAGE_STREAM:
            CHECK_EQUAL(field_number(fields, "periodMs"), command->period_ms);
            CHECK_EQUAL(field_number(fields, "kind"), command->kind);
            break;
        case MESSAGE_TIGHTEN:
            CHECK_EQUAL(field_number(fields, "limit"), command->limit);
            CHECK_EQUAL(field_number(fields, "value"), command->value);
            break;
        case MESSAGE_EVENTS_FROM:
            CHECK_EQUAL(field_number(fields, "number"), command->number);
            break;
        case MESSAGE_BLOB_READ:
            CHECK_EQUAL(field_number(fields, "blob"), command->blob);
            CHECK_EQUAL(field_number(fields, "offset"), command->offset);
            CHECK_EQUAL(field_number(fields, "length"), command->count);
            break;
        case MESSAGE_BLOB_WRITE:
            check_blob_write(command, fields);
            break;
        case MESSAGE_BLOB_COMMIT:
            CHECK_EQUAL(field_number(fields, "blob"), command->blob);
            CHECK_EQUAL(field_number(fields, "length"), command->length);
            CHECK_EQUAL(field_number(fields, "crc"), command->crc);
            break;
        case MESSAGE_WINDOWS:
            CHECK_EQUAL(field_number(fields, "periodMs"), command->period_ms);
            break;
        case MESSAGE_DITHER:
            CHECK_EQUAL(field_number(fields, "channel"), command->channel);
            CHECK_EQUAL(field_number(fields, "amplitude"), command->amplitude);
            CHECK_EQUAL(field_number(fields, "frequency"), command->hz);
            break;
        default:
            break;
    }
}

static void check_command(const struct frame *frame, const char *fields) {
    struct command command;

    CHECK_EQUAL(REFUSE_NOTHING, message_decode(frame, DRIVES_MAX, &command).reason);
    CHECK_EQUAL(frame->type, command.type);
    check_fields(&command, fields);
    good_from_host++;
}

static void encode_answer(uint8_t type, const char *fields, struct payload *payload) {
    const uint16_t answered = (uint16_t)field_number(fields, "answered");
    const uint8_t answered_type = (uint8_t)field_number(fields, "answeredType");
    if (type == MESSAGE_REFUSE) {
        const struct refusal refusal = {(enum refuse_reason)field_number(fields, "reason"),
                                        (int32_t)field_number(fields, "detail")};
        message_encode_refuse(answered, answered_type, refusal, payload);
    } else {
        message_encode_acknowledge(answered, answered_type, payload);
    }
}

static void encode_identity(const char *fields, struct payload *payload) {
    const struct identity identity = identity_of(fields);
    const struct description board = description_of(fields);
    message_encode_identity(&identity, &board, payload);
}

static void encode_limits(const char *fields, struct payload *payload) {
    uint32_t limits[LIMITS];
    for (unsigned i = 0; i < LIMITS; i++) {
        limits[i] = field_numbered(fields, "limit", i);
    }
    message_encode_limits(limits, payload);
}

static void encode_blob_data(const char *fields, struct payload *payload) {
    uint8_t bytes[BLOB_READ_MAX];
    const uint8_t count = bytes_of(fields, bytes);
    uint8_t *const at =
        message_encode_blob_data((uint8_t)field_number(fields, "blob"), (uint16_t)field_number(fields, "offset"),
                                 (uint16_t)field_number(fields, "total"), count, payload);
    memcpy(at, bytes, count);
}

static void encode_short_sample(const char *fields, struct payload *payload) {
    struct sample sample;
    memset(&sample, 0, sizeof sample);
    sample.time = field_number(fields, "time");
    for (unsigned i = 0; i < METERS_MAX; i++) {
        sample.meters[i].count = 0xABCD0000u + field_numbered(fields, "count", i);
        sample.meters[i].last_edge = field_numbered(fields, "edge", i);
    }
    for (unsigned i = 0; i < ANALOGS_MAX; i++) {
        sample.analogs[i].mean = (uint16_t)field_numbered(fields, "mean", i);
    }
    for (unsigned i = 0; i < DRIVES_MAX; i++) {
        const uint32_t applied = field_numbered(fields, "applied", i);
        sample.applied[i] = applied == UINT16_MAX ? DUTY_FULL : applied;
    }
    sample.state = (uint8_t)field_number(fields, "state");
    sample.inputs = (uint8_t)field_number(fields, "inputs");
    message_encode_short_sample(&sample, payload);
}

static void encode_self_test(const char *fields, struct payload *payload) {
    const struct self_test result = {(uint16_t)field_number(fields, "tried"),
                                     (uint16_t)field_number(fields, "failed")};
    message_encode_self_test(&result, payload);
}

static void encode_pulse_window(const char *fields, struct payload *payload) {
    const struct pulse_window window = pulse_window_of(fields);
    message_encode_pulse_window((uint8_t)field_number(fields, "meter"), &window, payload);
}

static void encode_sample(const char *fields, struct payload *payload) {
    const struct sample sample = sample_of(fields);
    message_encode_sample(&sample, payload);
}

static void encode_event(const char *fields, struct payload *payload) {
    const struct event event = event_of(fields);
    message_encode_event(&event, payload);
}

static void encode(uint8_t type, const char *fields, struct payload *payload) {
    switch (type) {
        case MESSAGE_IDENTITY:
            encode_identity(fields, payload);
            break;
        case MESSAGE_SAMPLE:
            encode_sample(fields, payload);
            break;
        case MESSAGE_EVENT:
            encode_event(fields, payload);
            break;
        case MESSAGE_LIMITS:
            encode_limits(fields, payload);
            break;
        case MESSAGE_SELF_TEST_RESULT:
            encode_self_test(fields, payload);
            break;
        case MESSAGE_BLOB_DATA:
            encode_blob_data(fields, payload);
            break;
        case MESSAGE_SHORT_SAMPLE:
            encode_short_sample(fields, payload);
            break;
        case MESSAGE_PULSE_WINDOW:
            encode_pulse_window(fields, payload);
            break;
        default:
            encode_answer(type, fields, payload);
            break;
    }
}

static void check_encoding(const struct hex_bytes *wire, uint8_t type, const char *fields) {
    struct payload payload = {0, {0}};

    encode(type, fields, &payload);
    const struct frame frame = {PROTOCOL_VERSION, type, (uint16_t)field_number(fields, "sequence"), payload.length,
                                payload_bytes(&payload)};
    const struct frame_written written = frame_encode(&frame, payload.wire, sizeof payload.wire);
    CHECK_BYTES(wire->bytes, wire->length, payload.wire, written.length);
    good_from_board++;
}

static void check_good(const struct hex_bytes *wire, const char *fields) {
    struct frame frame;

    if (!CHECK(receive(wire, &frame) == FRAME_GOOD)) {
        return;
    }
    CHECK_EQUAL(PROTOCOL_VERSION, frame.version);
    CHECK_EQUAL(type_named(field_text(fields, "type")), frame.type);
    CHECK_EQUAL(field_number(fields, "sequence"), frame.sequence);
    if (frame.type < MESSAGE_FROM_BOARD) {
        check_command(&frame, fields);
    } else {
        check_encoding(wire, frame.type, fields);
    }
}

static void check_refused(const struct hex_bytes *wire, enum refuse_reason reason) {
    struct frame frame;
    struct command command;

    if (!CHECK(receive(wire, &frame) == FRAME_GOOD)) {
        return;
    }
    CHECK_EQUAL(PROTOCOL_VERSION, frame.version);
    /* A board's own types are for the host to judge; to a board they are frames that it never obeys. */
    if (frame.type < MESSAGE_FROM_BOARD) {
        CHECK_EQUAL(reason, message_decode(&frame, DRIVES_MAX, &command).reason);
        refused++;
    }
}

static void check_foreign(const struct hex_bytes *wire) {
    struct frame frame;
    if (CHECK(receive(wire, &frame) == FRAME_GOOD)) {
        CHECK(frame.version != PROTOCOL_VERSION);
        foreign++;
    }
}

static void check_dropped(const struct hex_bytes *wire, enum frame_outcome outcome) {
    struct frame frame;
    CHECK_EQUAL(outcome, receive(wire, &frame));
    dropped++;
}

static void judge(const char *outcome, const struct hex_bytes *wire, const char *fields) {
    if (strcmp(outcome, "good") == 0) {
        check_good(wire, fields);
    } else if (strcmp(outcome, "bad-cobs") == 0) {
        check_dropped(wire, FRAME_BAD_COBS);
    } else if (strcmp(outcome, "bad-length") == 0) {
        check_dropped(wire, FRAME_BAD_LENGTH);
    } else if (strcmp(outcome, "bad-crc") == 0) {
        check_dropped(wire, FRAME_BAD_CRC);
    } else if (strcmp(outcome, "foreign-version") == 0) {
        check_foreign(wire);
    } else if (strcmp(outcome, "unknown-type") == 0) {
        check_refused(wire, REFUSE_UNKNOWN_TYPE);
    } else if (strcmp(outcome, "wrong-length") == 0) {
        check_refused(wire, REFUSE_WRONG_LENGTH);
    } else if (strcmp(outcome, "out-of-range") == 0) {
        check_refused(wire, REFUSE_OUT_OF_RANGE);
    } else {
        CHECK(false);
    }
}

static void golden_row(char *line) {
    struct hex_bytes wire;

    if (line[0] == '#' || line[0] == '\0') {
        return;
    }
    char *const name = fixture_cut(line, '|');
    char *const hex = name == NULL ? NULL : fixture_cut(name, '|');
    char *const fields = hex == NULL ? NULL : fixture_cut(hex, '|');
    check_context(line);
    if (!CHECK(fields != NULL) || !CHECK(fixture_cut(fields, '|') != NULL)) {
        return;
    }
    check_context(name);
    if (CHECK(fixture_hex(hex, &wire))) {
        judge(line, &wire, fields);
    }
}

static void golden_frames_are_read_and_written_as_they_stand(void) {
    CHECK(fixture_lines("golden.txt", golden_row) > 0);
    check_context("rows of each kind");
    CHECK(good_from_host >= 31);
    CHECK(good_from_board >= 27);
    CHECK(dropped >= 7);
    CHECK(foreign >= 3);
    CHECK(refused >= 20);
}

void golden_tests(void) {
    RUN(golden_frames_are_read_and_written_as_they_stand);
}
