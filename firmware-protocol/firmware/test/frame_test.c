#include "check.h"
#include "frame.h"
#include "suites.h"

#include <string.h>

static const uint8_t payload[FRAME_PAYLOAD_MAX] = {1, 2, 0, 4};

static struct frame frame_of(uint8_t length) {
    const struct frame frame = {1, 0x84, 0x1234, length, payload};
    return frame;
}

/* Feeds all bytes and returns the last outcome that is one. */
static enum frame_outcome feed(struct frame_receiver *receiver, const uint8_t *bytes, size_t length,
                               struct frame *frame) {
    enum frame_outcome last = FRAME_NONE;
    for (size_t i = 0; i < length; i++) {
        const enum frame_outcome outcome = frame_receive(receiver, bytes[i], frame);
        if (outcome != FRAME_NONE) {
            last = outcome;
        }
    }
    return last;
}

static void start(struct frame_receiver *receiver) {
    struct frame none;
    frame_receiver_start(receiver);
    CHECK_EQUAL(FRAME_NONE, frame_receive(receiver, 0, &none));
}

static void every_payload_length_comes_back(void) {
    struct frame_receiver receiver;
    struct frame heard;
    uint8_t wire[FRAME_WIRE_MAX(FRAME_PAYLOAD_MAX)];

    CHECK_EQUAL(120, sizeof wire);
    start(&receiver);
    for (uint8_t length = 0; length <= FRAME_PAYLOAD_MAX; length++) {
        const struct frame sent = frame_of(length);
        const struct frame_written written = frame_encode(&sent, wire, sizeof wire);
        CHECK(written.fitted);
        CHECK_EQUAL(FRAME_GOOD, feed(&receiver, wire, written.length, &heard));
        CHECK_EQUAL(1, heard.version);
        CHECK_EQUAL(0x84, heard.type);
        CHECK_EQUAL(0x1234, heard.sequence);
        CHECK_BYTES(payload, length, heard.payload, heard.length);
    }
    CHECK_EQUAL(0, receiver.dropped);
}

static void a_frame_that_does_not_fit_is_not_written(void) {
    uint8_t wire[FRAME_WIRE_MAX(10u)];
    const struct frame fits = frame_of(10);
    const struct frame too_long = frame_of(11);
    CHECK(frame_encode(&fits, wire, sizeof wire).fitted);
    CHECK(!frame_encode(&too_long, wire, sizeof wire).fitted);
    CHECK_EQUAL(0, frame_encode(&too_long, wire, sizeof wire).length);
}

static void a_payload_above_the_limit_is_not_written(void) {
    static const uint8_t big[FRAME_PAYLOAD_MAX + 1u];
    uint8_t wire[200];
    const struct frame frame = {1, 2, 3, (uint8_t)sizeof big, big};
    CHECK(!frame_encode(&frame, wire, sizeof wire).fitted);
}

static void bytes_before_the_first_delimiter_are_thrown_away(void) {
    struct frame_receiver receiver;
    struct frame heard;
    uint8_t wire[FRAME_WIRE_MAX(4u)];
    const struct frame sent = frame_of(4);
    const size_t length = frame_encode(&sent, wire, sizeof wire).length;

    frame_receiver_start(&receiver);
    CHECK_EQUAL(FRAME_NONE, feed(&receiver, wire, length, &heard));
    CHECK_EQUAL(0, receiver.dropped);
    CHECK_EQUAL(FRAME_GOOD, feed(&receiver, wire, length, &heard));
}

static void idle_delimiters_mean_nothing(void) {
    struct frame_receiver receiver;
    struct frame heard;
    const uint8_t idle[5] = {0};
    start(&receiver);
    CHECK_EQUAL(FRAME_NONE, feed(&receiver, idle, sizeof idle, &heard));
    CHECK_EQUAL(0, receiver.dropped);
}

static void a_frame_without_end_is_thrown_away_and_the_next_one_is_heard(void) {
    struct frame_receiver receiver;
    struct frame heard;
    uint8_t wire[FRAME_WIRE_MAX(4u)];
    const struct frame sent = frame_of(4);
    const size_t length = frame_encode(&sent, wire, sizeof wire).length;

    start(&receiver);
    for (unsigned i = 0; i < 100000; i++) {
        if (frame_receive(&receiver, 0x55, &heard) != FRAME_NONE) {
            CHECK(false);
        }
    }
    CHECK(receiver.length <= FRAME_ENCODED_MAX);
    CHECK_EQUAL(FRAME_BAD_LENGTH, frame_receive(&receiver, 0, &heard));
    CHECK_EQUAL(1, receiver.dropped);
    CHECK_EQUAL(FRAME_GOOD, feed(&receiver, wire, length, &heard));
}

static void the_count_of_dropped_frames_stays_at_its_highest(void) {
    struct frame_receiver receiver;
    struct frame heard;
    const uint8_t bad[] = {0x05, 0x31, 0};
    start(&receiver);
    for (unsigned i = 0; i < 70000; i++) {
        feed(&receiver, bad, sizeof bad, &heard);
    }
    CHECK_EQUAL(0xFFFF, receiver.dropped);
}

void frame_tests(void) {
    RUN(every_payload_length_comes_back);
    RUN(a_frame_that_does_not_fit_is_not_written);
    RUN(a_payload_above_the_limit_is_not_written);
    RUN(bytes_before_the_first_delimiter_are_thrown_away);
    RUN(idle_delimiters_mean_nothing);
    RUN(a_frame_without_end_is_thrown_away_and_the_next_one_is_heard);
    RUN(the_count_of_dropped_frames_stays_at_its_highest);
}
