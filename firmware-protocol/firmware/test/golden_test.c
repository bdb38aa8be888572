/* The golden frames: computed by another encoder, so that the core is not checked against itself. */
#include "check.h"
#include "fixture.h"
#include "golden_fields.h"
#include "message.h"
#include "suites.h"

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
        {"hello", MESSAGE_HELLO},           {"arm", MESSAGE_ARM},
        {"drive", MESSAGE_DRIVE},           {"stream", MESSAGE_STREAM},
        {"keep-alive", MESSAGE_KEEP_ALIVE}, {"make-safe", MESSAGE_MAKE_SAFE},
        {"identity", MESSAGE_IDENTITY},     {"acknowledge", MESSAGE_ACKNOWLEDGE},
        {"refuse", MESSAGE_REFUSE},         {"sample", MESSAGE_SAMPLE},
        {"event", MESSAGE_EVENT},
    };
    for (size_t i = 0; i < sizeof types / sizeof *types; i++) {
        if (strcmp(types[i].name, name) == 0) {
            return types[i].type;
        }
    }
    CHECK(false);
    return 0;
}

static void check_command(const struct frame *frame, const char *fields) {
    struct command command;

    CHECK_EQUAL(REFUSE_NOTHING, message_decode(frame, DRIVES_MAX, &command).reason);
    CHECK_EQUAL(frame->type, command.type);
    if (frame->type == MESSAGE_ARM) {
        CHECK_EQUAL(field_number(fields, "bootId"), command.boot_id);
    } else if (frame->type == MESSAGE_DRIVE) {
        CHECK_EQUAL(field_number(fields, "channel"), command.channel);
        CHECK_EQUAL(field_number(fields, "duty"), command.duty);
        CHECK_EQUAL(field_number(fields, "ramp"), command.ramp);
    } else if (frame->type == MESSAGE_STREAM) {
        CHECK_EQUAL(field_number(fields, "periodMs"), command.period_ms);
    }
    good_from_host++;
}

static void encode(uint8_t type, const char *fields, struct payload *payload) {
    if (type == MESSAGE_IDENTITY) {
        const struct identity identity = identity_of(fields);
        message_encode_identity(&identity, payload);
    } else if (type == MESSAGE_SAMPLE) {
        const struct sample sample = sample_of(fields);
        message_encode_sample(&sample, payload);
    } else if (type == MESSAGE_EVENT) {
        const struct event event = event_of(fields);
        message_encode_event(&event, payload);
    } else {
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
}

static void check_encoding(const struct hex_bytes *wire, uint8_t type, const char *fields) {
    struct payload payload = {0, {0}};
    uint8_t out[FRAME_WIRE_MAX(FRAME_PAYLOAD_MAX)];

    encode(type, fields, &payload);
    const struct frame frame = {PROTOCOL_VERSION, type, (uint16_t)field_number(fields, "sequence"), payload.length,
                                payload.bytes};
    const struct frame_written written = frame_encode(&frame, out, sizeof out);
    CHECK_BYTES(wire->bytes, wire->length, out, written.length);
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
    CHECK(good_from_host >= 13);
    CHECK(good_from_board >= 13);
    CHECK(dropped >= 7);
    CHECK(foreign >= 3);
    CHECK(refused >= 8);
}

void golden_tests(void) {
    RUN(golden_frames_are_read_and_written_as_they_stand);
}
