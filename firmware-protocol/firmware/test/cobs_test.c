/* COBS against published vectors: cobs-published.csv and cobs-rejects.csv name the source of each row. */
#include "check.h"
#include "cobs.h"
#include "fixture.h"
#include "suites.h"

#include <string.h>

static unsigned rows;

static bool is_heading(const char *line) {
    return strstr(line, "_hex") != NULL;
}

static void published_row(char *line) {
    struct hex_bytes plain;
    struct hex_bytes encoded;
    uint8_t out[FIXTURE_BYTES_MAX];

    if (is_heading(line)) {
        return;
    }
    char *const second = fixture_cut(line, ',');
    check_context(line);
    if (!CHECK(second != NULL) || !CHECK(fixture_cut(second, ',') != NULL)) {
        return;
    }
    CHECK(fixture_hex(line, &plain));
    CHECK(fixture_hex(second, &encoded));
    rows++;

    struct cobs_result result = cobs_encode(plain.bytes, plain.length, out, sizeof out);
    CHECK_EQUAL(COBS_OK, result.status);
    CHECK_BYTES(encoded.bytes, encoded.length, out, result.length);
    CHECK(result.length <= COBS_ENCODED_MAX(plain.length));

    result = cobs_decode(encoded.bytes, encoded.length, out, sizeof out);
    CHECK_EQUAL(COBS_OK, result.status);
    CHECK_BYTES(plain.bytes, plain.length, out, result.length);

    result = cobs_decode(encoded.bytes, encoded.length, encoded.bytes, sizeof encoded.bytes);
    CHECK_EQUAL(COBS_OK, result.status);
    CHECK_BYTES(plain.bytes, plain.length, encoded.bytes, result.length);
}

static void published_values_encode_and_decode(void) {
    rows = 0;
    fixture_lines("cobs-published.csv", published_row);
    CHECK_EQUAL(14, rows);
}

static void reject_row(char *line) {
    struct hex_bytes encoded;
    uint8_t out[FIXTURE_BYTES_MAX];

    if (is_heading(line)) {
        return;
    }
    char *const reason = fixture_cut(line, ',');
    check_context(line);
    if (!CHECK(reason != NULL) || !CHECK(fixture_hex(line, &encoded))) {
        return;
    }
    rows++;
    const bool past_end = strncmp(reason, "length code", 11) == 0;
    const struct cobs_result result = cobs_decode(encoded.bytes, encoded.length, out, sizeof out);
    CHECK_EQUAL(past_end ? COBS_RUNS_PAST_END : COBS_ZERO_INSIDE, result.status);
}

static void published_bad_bytes_are_rejected(void) {
    rows = 0;
    fixture_lines("cobs-rejects.csv", reject_row);
    CHECK_EQUAL(4, rows);
}

static void a_buffer_too_small_is_never_overrun(void) {
    uint8_t plain[300];
    uint8_t encoded[COBS_ENCODED_MAX(sizeof plain)];
    uint8_t out[sizeof encoded + 1u];

    for (size_t i = 0; i < sizeof plain; i++) {
        plain[i] = (uint8_t)(i % 7u == 0 ? 0 : i);
    }
    const struct cobs_result whole = cobs_encode(plain, sizeof plain, encoded, sizeof encoded);
    CHECK_EQUAL(COBS_OK, whole.status);
    for (size_t capacity = 0; capacity < whole.length; capacity++) {
        out[capacity] = 0xA5;
        CHECK_EQUAL(COBS_NO_ROOM, cobs_encode(plain, sizeof plain, out, capacity).status);
        CHECK_EQUAL(0xA5, out[capacity]);
    }
    for (size_t capacity = 0; capacity < sizeof plain; capacity++) {
        out[capacity] = 0xA5;
        CHECK_EQUAL(COBS_NO_ROOM, cobs_decode(encoded, whole.length, out, capacity).status);
        CHECK_EQUAL(0xA5, out[capacity]);
    }
}

static void every_length_comes_back_whether_stuffed_in_place_or_not(void) {
    uint8_t plain[254];
    uint8_t apart[COBS_ENCODED_MAX(sizeof plain)];
    uint8_t in_place[COBS_ENCODED_MAX(sizeof plain)];

    for (size_t zeros = 1; zeros <= 5; zeros++) {
        for (size_t length = 0; length <= sizeof plain; length++) {
            for (size_t i = 0; i < length; i++) {
                plain[i] = (uint8_t)(i % zeros == zeros - 1u ? 0 : i + 1u);
            }
            const struct cobs_result first = cobs_encode(plain, length, apart, sizeof apart);
            memcpy(in_place + 1, plain, length);
            const struct cobs_result second = cobs_encode(in_place + 1, length, in_place, sizeof in_place);
            CHECK_EQUAL(COBS_OK, first.status);
            CHECK_BYTES(apart, first.length, in_place, second.length);
            CHECK(memchr(apart, 0, first.length) == NULL);
            const struct cobs_result back = cobs_decode(in_place, second.length, in_place, sizeof in_place);
            CHECK_BYTES(plain, length, in_place, back.length);
        }
    }
}

void cobs_tests(void) {
    RUN(published_values_encode_and_decode);
    RUN(published_bad_bytes_are_rejected);
    RUN(a_buffer_too_small_is_never_overrun);
    RUN(every_length_comes_back_whether_stuffed_in_place_or_not);
}
