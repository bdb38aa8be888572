/* What host payloads are refused for, and with which detail. */
#include "check.h"
#include "message.h"
#include "suites.h"

#include <stdio.h>
#include <string.h>

struct row {
    uint8_t type;
    uint8_t length;
    uint8_t payload[40];
    enum refuse_reason reason;
    int32_t detail;
};

static void check_row(const struct row *row, uint8_t drives) {
    const struct frame frame = {PROTOCOL_VERSION, row->type, 0, row->length, row->payload};
    struct command command;
    char context[64];

    snprintf(context, sizeof context, "type %u, length %u, first byte %u", row->type, row->length, row->payload[0]);
    check_context(context);
    const struct refusal refusal = message_decode(&frame, drives, &command);
    CHECK_EQUAL(row->reason, refusal.reason);
    CHECK_EQUAL(row->detail, refusal.detail);
}

static void unknown_types_name_the_type(void) {
    static const struct row rows[] = {
        {0x00, 0, {0}, REFUSE_UNKNOWN_TYPE, 0x00},
        {0x10, 0, {0}, REFUSE_UNKNOWN_TYPE, 0x10},
        {0x7F, 8, {0}, REFUSE_UNKNOWN_TYPE, 0x7F},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        check_row(&rows[i], 1);
    }
}

static void wrong_lengths_name_the_length(void) {
    static const struct row rows[] = {
        {MESSAGE_HELLO, 1, {0}, REFUSE_WRONG_LENGTH, 1},     {MESSAGE_ARM, 3, {0}, REFUSE_WRONG_LENGTH, 3},
        {MESSAGE_ARM, 5, {0}, REFUSE_WRONG_LENGTH, 5},       {MESSAGE_DRIVE, 6, {0}, REFUSE_WRONG_LENGTH, 6},
        {MESSAGE_DRIVE, 8, {9}, REFUSE_WRONG_LENGTH, 8},     {MESSAGE_STREAM, 0, {0}, REFUSE_WRONG_LENGTH, 0},
        {MESSAGE_STREAM, 2, {1}, REFUSE_WRONG_LENGTH, 2},    {MESSAGE_KEEP_ALIVE, 1, {0}, REFUSE_WRONG_LENGTH, 1},
        {MESSAGE_MAKE_SAFE, 1, {0}, REFUSE_WRONG_LENGTH, 1}, {MESSAGE_READ_LIMITS, 1, {0}, REFUSE_WRONG_LENGTH, 1},
        {MESSAGE_TIGHTEN, 4, {0}, REFUSE_WRONG_LENGTH, 4},   {MESSAGE_TIGHTEN, 6, {0}, REFUSE_WRONG_LENGTH, 6},
        {MESSAGE_EVENTS_FROM, 1, {0}, REFUSE_WRONG_LENGTH, 1}, {MESSAGE_EVENTS_FROM, 3, {0}, REFUSE_WRONG_LENGTH, 3},
        {MESSAGE_SELF_TEST, 1, {0}, REFUSE_WRONG_LENGTH, 1}, {MESSAGE_BLOB_READ, 3, {0}, REFUSE_WRONG_LENGTH, 3},
        {MESSAGE_BLOB_READ, 5, {0}, REFUSE_WRONG_LENGTH, 5}, {MESSAGE_BLOB_WRITE, 3, {0}, REFUSE_WRONG_LENGTH, 3},
        {MESSAGE_BLOB_WRITE, 0, {0}, REFUSE_WRONG_LENGTH, 0}, {MESSAGE_BLOB_WRITE, 36, {9}, REFUSE_WRONG_LENGTH, 36},
        {MESSAGE_BLOB_COMMIT, 4, {0}, REFUSE_WRONG_LENGTH, 4}, {MESSAGE_WINDOWS, 3, {0}, REFUSE_WRONG_LENGTH, 3},
        {MESSAGE_DITHER, 4, {0}, REFUSE_WRONG_LENGTH, 4},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        check_row(&rows[i], 1);
    }
}

static void ranges_name_the_field(void) {
    static const struct row rows[] = {
        {MESSAGE_DRIVE, 7, {0, 0, 0, 1, 0, 0xFF, 0xFF}, REFUSE_NOTHING, 0},
        {MESSAGE_DRIVE, 7, {0, 1, 0, 1, 0, 0, 0}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_DRIVE, 7, {0, 0, 0, 0, 1, 0, 0}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_DRIVE, 7, {1, 0, 0, 0, 0, 0, 0}, REFUSE_OUT_OF_RANGE, 1},
        {MESSAGE_DRIVE, 7, {255, 1, 0, 1, 0, 0, 0}, REFUSE_OUT_OF_RANGE, 1},
        {MESSAGE_STREAM, 3, {0, 0, 0}, REFUSE_NOTHING, 0},
        {MESSAGE_STREAM, 3, {1, 0, 1}, REFUSE_NOTHING, 0},
        {MESSAGE_STREAM, 3, {0xE8, 3, 0}, REFUSE_NOTHING, 0},
        {MESSAGE_STREAM, 3, {0xE9, 3, 0}, REFUSE_OUT_OF_RANGE, 1},
        {MESSAGE_STREAM, 3, {0xFF, 0xFF, 9}, REFUSE_OUT_OF_RANGE, 1},
        {MESSAGE_STREAM, 3, {20, 0, 2}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_TIGHTEN, 5, {12, 0, 0, 0, 0}, REFUSE_OUT_OF_RANGE, 1},
        {MESSAGE_TIGHTEN, 5, {0, 0xFF, 0xFF, 0, 0}, REFUSE_NOTHING, 0},
        {MESSAGE_TIGHTEN, 5, {0, 0, 0, 1, 0}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_TIGHTEN, 5, {1, 0xE8, 3, 0, 0}, REFUSE_NOTHING, 0},
        {MESSAGE_TIGHTEN, 5, {1, 0xE9, 3, 0, 0}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_TIGHTEN, 5, {2, 0x00, 0xDD, 0x6D, 0}, REFUSE_NOTHING, 0},
        {MESSAGE_TIGHTEN, 5, {2, 0x01, 0xDD, 0x6D, 0}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_TIGHTEN, 5, {6, 0x60, 0xEA, 0, 0}, REFUSE_NOTHING, 0},
        {MESSAGE_TIGHTEN, 5, {6, 0x61, 0xEA, 0, 0}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_TIGHTEN, 5, {8, 0x61, 0xEA, 0, 0}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_TIGHTEN, 5, {11, 100, 0, 0, 0}, REFUSE_NOTHING, 0},
        {MESSAGE_TIGHTEN, 5, {11, 99, 0, 0, 0}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_TIGHTEN, 5, {11, 0xE9, 3, 0, 0}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_EVENTS_FROM, 2, {0xFF, 0xFF}, REFUSE_NOTHING, 0},
        {MESSAGE_BLOB_READ, 4, {1, 255, 0, 64}, REFUSE_NOTHING, 0},
        {MESSAGE_BLOB_READ, 4, {2, 0, 0, 1}, REFUSE_OUT_OF_RANGE, 1},
        {MESSAGE_BLOB_READ, 4, {0, 0, 1, 1}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_BLOB_READ, 4, {0, 0, 0, 0}, REFUSE_OUT_OF_RANGE, 3},
        {MESSAGE_BLOB_READ, 4, {0, 0, 0, 65}, REFUSE_OUT_OF_RANGE, 3},
        {MESSAGE_BLOB_WRITE, 4, {1, 255, 0, 7}, REFUSE_NOTHING, 0},
        {MESSAGE_BLOB_WRITE, 5, {1, 255, 0, 7, 8}, REFUSE_OUT_OF_RANGE, 3},
        {MESSAGE_BLOB_WRITE, 4, {1, 0, 1, 7}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_BLOB_WRITE, 4, {2, 0, 1, 7}, REFUSE_OUT_OF_RANGE, 1},
        {MESSAGE_BLOB_COMMIT, 5, {0, 0, 1, 0, 0}, REFUSE_NOTHING, 0},
        {MESSAGE_BLOB_COMMIT, 5, {0, 1, 1, 0, 0}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_BLOB_COMMIT, 5, {0, 0, 0, 0, 0}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_BLOB_COMMIT, 5, {2, 0, 0, 0, 0}, REFUSE_OUT_OF_RANGE, 1},
        {MESSAGE_WINDOWS, 2, {0, 0}, REFUSE_NOTHING, 0},
        {MESSAGE_WINDOWS, 2, {99, 0}, REFUSE_OUT_OF_RANGE, 1},
        {MESSAGE_WINDOWS, 2, {100, 0}, REFUSE_NOTHING, 0},
        {MESSAGE_WINDOWS, 2, {0x10, 0x27}, REFUSE_NOTHING, 0},
        {MESSAGE_WINDOWS, 2, {0x11, 0x27}, REFUSE_OUT_OF_RANGE, 1},
        {MESSAGE_DITHER, 5, {0, 0, 0x20, 250, 0}, REFUSE_NOTHING, 0},
        {MESSAGE_DITHER, 5, {1, 0, 0, 50, 0}, REFUSE_OUT_OF_RANGE, 1},
        {MESSAGE_DITHER, 5, {0, 1, 0x20, 50, 0}, REFUSE_OUT_OF_RANGE, 2},
        {MESSAGE_DITHER, 5, {0, 0, 0, 49, 0}, REFUSE_OUT_OF_RANGE, 3},
        {MESSAGE_DITHER, 5, {0, 0, 0, 251, 0}, REFUSE_OUT_OF_RANGE, 3},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        check_row(&rows[i], 1);
    }
}

static void the_drive_count_of_the_board_is_the_limit_of_the_channel(void) {
    static const struct row second = {MESSAGE_DRIVE, 7, {1}, REFUSE_NOTHING, 0};
    static const struct row none = {MESSAGE_DRIVE, 7, {0}, REFUSE_OUT_OF_RANGE, 1};
    check_row(&second, 2);
    check_row(&none, 0);
}

void message_tests(void) {
    RUN(unknown_types_name_the_type);
    RUN(wrong_lengths_name_the_length);
    RUN(ranges_name_the_field);
    RUN(the_drive_count_of_the_board_is_the_limit_of_the_channel);
}
