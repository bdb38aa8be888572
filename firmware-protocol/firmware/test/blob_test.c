/* Blobs: stored, read, and whole whatever moment the power chooses to go. */
#include "bench.h"
#include "blobs.h"
#include "bytes.h"
#include "check.h"
#include "crc16.h"
#include "suites.h"

#include <stdio.h>
#include <string.h>

struct content {
    uint16_t length;
    uint8_t bytes[BLOB_BYTES_MAX];
};

static struct content content(uint16_t length, uint8_t seed) {
    struct content made = {length, {0}};
    for (uint16_t i = 0; i < length; i++) {
        made.bytes[i] = (uint8_t)(seed + i * 7u);
    }
    return made;
}

static void write_all(uint8_t blob, const struct content *what) {
    for (uint16_t at = 0; at < what->length; at = (uint16_t)(at + BLOB_WRITE_MAX)) {
        const uint16_t left = (uint16_t)(what->length - at);
        bench_blob_write(blob, at, what->bytes + at, (uint8_t)(left < BLOB_WRITE_MAX ? left : BLOB_WRITE_MAX));
        bench_run_ms(130);
    }
}

static uint16_t commit(uint8_t blob, const struct content *what) {
    const uint16_t sequence = bench_blob_commit(blob, what->length, crc16(what->bytes, what->length));
    bench_run_ms(40);
    return sequence;
}

static void store_blob(uint8_t blob, const struct content *what) {
    write_all(blob, what);
    bench_check_acknowledged(commit(blob, what), MESSAGE_BLOB_COMMIT);
}

static struct content read_all(uint8_t blob) {
    struct content read = {0, {0}};
    uint16_t at = 0;
    do {
        bench_forget();
        bench_blob_read(blob, at, BLOB_READ_MAX);
        bench_run_ms(6);
        const struct heard *const data = bench_last(MESSAGE_BLOB_DATA);
        if (!CHECK(data != NULL)) {
            break;
        }
        CHECK_EQUAL(blob, data->payload[0]);
        CHECK_EQUAL(at, get_u16(data->payload + 1));
        read.length = get_u16(data->payload + 3);
        const uint8_t count = (uint8_t)(data->length - 5u);
        CHECK(at + count <= read.length && (count == BLOB_READ_MAX || at + count == read.length));
        memcpy(read.bytes + at, data->payload + 5, count);
        at = (uint16_t)(at + BLOB_READ_MAX);
    } while (at < read.length);
    return read;
}

static bool is_same(const struct content *one, const struct content *other) {
    return one->length == other->length && memcmp(one->bytes, other->bytes, one->length) == 0;
}

static void check_stored(uint8_t blob, const struct content *what) {
    const struct content read = read_all(blob);
    CHECK_BYTES(what->bytes, what->length, read.bytes, read.length);
}

static void nothing_is_stored_at_first(void) {
    bench_start();
    CHECK_EQUAL(0, read_all(0).length);
    CHECK_EQUAL(0, read_all(1).length);
}

static void a_blob_of_every_length_is_read_as_it_was_stored(void) {
    static const uint16_t lengths[] = {1, 2, 31, 32, 33, 63, 64, 65, 128, 255, 256};
    bench_start();
    for (size_t i = 0; i < sizeof lengths / sizeof *lengths; i++) {
        const struct content what = content(lengths[i], (uint8_t)(i * 13u));
        store_blob((uint8_t)(i % 2u), &what);
        check_stored((uint8_t)(i % 2u), &what);
        bench_reset_board(RESET_POWER_ON);
        check_stored((uint8_t)(i % 2u), &what);
    }
}

static void the_two_blobs_do_not_disturb_each_other(void) {
    const struct content one = content(256, 1);
    const struct content other = content(200, 77);
    bench_start();
    store_blob(0, &one);
    store_blob(1, &other);
    for (unsigned i = 0; i < 20; i++) {
        const struct content next = content((uint16_t)(100u + i), (uint8_t)i);
        store_blob(1, &next);
        check_stored(0, &one);
        check_stored(1, &next);
        bench_reset_board(RESET_WATCHDOG);
        check_stored(0, &one);
        check_stored(1, &next);
    }
}

static void bytes_beyond_the_end_are_not_given(void) {
    const struct content what = content(40, 3);
    bench_start();
    store_blob(1, &what);
    bench_forget();
    bench_blob_read(1, 32, 64);
    bench_run_ms(5);
    CHECK_EQUAL(13, bench_last(MESSAGE_BLOB_DATA)->length);
    bench_blob_read(1, 40, 1);
    bench_run_ms(5);
    CHECK_EQUAL(5, bench_last(MESSAGE_BLOB_DATA)->length);
    CHECK_EQUAL(40, get_u16(bench_last(MESSAGE_BLOB_DATA)->payload + 3));
}

static void a_commit_with_another_crc_stores_nothing(void) {
    const struct content old = content(30, 5);
    const struct content new = content(60, 9);
    bench_start();
    store_blob(1, &old);
    write_all(1, &new);
    bench_check_refused(bench_blob_commit(1, 60, (uint16_t)(crc16(new.bytes, 60) ^ 1u)), MESSAGE_BLOB_COMMIT,
                        REFUSE_NOT_STORED, 0);
    check_stored(1, &old);
    bench_check_acknowledged(commit(1, &new), MESSAGE_BLOB_COMMIT);
    check_stored(1, &new);
}

static void a_commit_of_a_blob_that_was_never_written_is_refused(void) {
    const struct content what = content(16, 5);
    bench_start();
    bench_check_refused(commit(0, &what), MESSAGE_BLOB_COMMIT, REFUSE_NOT_STORED, 0);
    write_all(1, &what);
    bench_check_refused(commit(0, &what), MESSAGE_BLOB_COMMIT, REFUSE_NOT_STORED, 0);
    CHECK_EQUAL(0, read_all(0).length);
}

static void doing_it_twice_equals_doing_it_once(void) {
    const struct content what = content(32, 5);
    bench_start();
    write_all(0, &what);
    const uint16_t again = bench_blob_write(0, 0, what.bytes, 32);
    bench_run_ms(10);
    bench_check_acknowledged(again, MESSAGE_BLOB_WRITE);
    CHECK_EQUAL(32, store.writes);
    bench_check_acknowledged(commit(0, &what), MESSAGE_BLOB_COMMIT);
    const unsigned writes = store.writes;
    bench_check_acknowledged(commit(0, &what), MESSAGE_BLOB_COMMIT);
    CHECK_EQUAL(writes, store.writes);
    check_stored(0, &what);
}

static void the_acknowledge_comes_when_it_is_stored_and_within_half_a_second(void) {
    const struct content what = content(32, 200);
    bench_start();
    bench_forget();
    const uint16_t sequence = bench_blob_write(1, 224, what.bytes, 32);
    bench_run_ms(90);
    CHECK_EQUAL(0, bench_count(MESSAGE_ACKNOWLEDGE));
    CHECK(blobs_busy(&board.blobs));
    bench_run_ms(60);
    bench_check_acknowledged(sequence, MESSAGE_BLOB_WRITE);
    CHECK_EQUAL(32, store.writes);
}

static void a_second_one_is_refused_while_the_first_is_under_way(void) {
    const struct content what = content(32, 200);
    bench_start();
    const uint16_t first = bench_blob_write(1, 0, what.bytes, 32);
    bench_run_ms(20);
    bench_check_refused(bench_blob_write(1, 32, what.bytes, 32), MESSAGE_BLOB_WRITE, REFUSE_BUSY, 0);
    bench_check_refused(bench_blob_commit(1, 32, 0), MESSAGE_BLOB_COMMIT, REFUSE_BUSY, 0);
    bench_run_ms(120);
    bench_check_acknowledged(first, MESSAGE_BLOB_WRITE);
    bench_check_acknowledged(commit(1, &what), MESSAGE_BLOB_COMMIT);
}

static void arming_while_a_blob_is_written_spoils_nothing(void) {
    const struct content what = content(32, 100);
    bench_start();
    const uint16_t sequence = bench_blob_write(1, 0, what.bytes, 32);
    bench_arm();
    CHECK_EQUAL(STATE_ARMED, board.state);
    bench_run_ms(130);
    bench_check_acknowledged(sequence, MESSAGE_BLOB_WRITE);
    bench_make_safe();
    bench_rest();
    store_blob(1, &what);
    check_stored(1, &what);
}

static void the_board_reads_its_unique_id_from_its_first_blob(void) {
    const struct content what = content(20, 0x11);
    const uint8_t none[UNIQUE_ID_BYTES] = {0};
    bench_start();
    CHECK_BYTES(none, sizeof none, board.identity.unique_id, sizeof none);
    store_blob(0, &what);
    bench_reset_board(RESET_EXTERNAL);
    CHECK_BYTES(what.bytes, UNIQUE_ID_BYTES, board.identity.unique_id, UNIQUE_ID_BYTES);
    const struct content too_short = content(7, 0x22);
    store_blob(0, &too_short);
    bench_reset_board(RESET_EXTERNAL);
    CHECK_BYTES(none, sizeof none, board.identity.unique_id, sizeof none);
}

static void the_age_of_a_blob_rolls_over(void) {
    bench_start();
    for (unsigned i = 0; i < 300; i++) {
        const struct content what = content((uint16_t)(1u + i % 3u), (uint8_t)i);
        store_blob(0, &what);
        bench_reset_board(RESET_EXTERNAL);
        check_stored(0, &what);
    }
}

/* From one power cut to the next: a board that stored `old` (none when its length is 0) is given `new`. */
static bool cut_at(unsigned write, uint8_t spoilt, const struct content *old, const struct content *new,
                   const struct content *other) {
    bench_start();
    store_blob(0, other);
    if (old->length > 0) {
        store_blob(1, old);
        /* A second copy of it, so that the spare slot holds an obsolete blob with its seal. */
        const struct content between = content((uint16_t)(old->length % BLOB_BYTES_MAX + 1u), 99);
        store_blob(1, &between);
        store_blob(1, old);
    }
    store.writes = 0;
    store.power_lasts = write;
    store.spoilt = spoilt;
    write_all(1, new);
    commit(1, new);
    const bool cut = store.power_cut;
    store.power_cut = false;
    store.power_lasts = UINT32_MAX;
    bench_reset_board(RESET_POWER_ON);
    const struct content found = read_all(1);
    CHECK(is_same(&found, old) || is_same(&found, new));
    CHECK(cut || is_same(&found, new));
    check_stored(0, other);
    /* And the board goes on from there. */
    store_blob(1, new);
    check_stored(1, new);
    bench_reset_board(RESET_POWER_ON);
    check_stored(1, new);
    check_stored(0, other);
    return cut;
}

static void cut_everywhere(const struct content *old, const struct content *new) {
    static const uint8_t left[] = {0x00, 0xFF, 0xA5, 0x25, 0x7E};
    const struct content other = content(50, 200);
    char context[64];
    for (size_t i = 0; i < sizeof left; i++) {
        unsigned write = 0;
        do {
            snprintf(context, sizeof context, "cut in write %u, which left %u", write, left[i]);
            check_context(context);
        } while (cut_at(write++, left[i], old, new, &other));
        CHECK(write > new->length);
    }
}

static void a_power_cut_in_any_byte_leaves_the_old_blob_or_the_new_one(void) {
    const struct content old = content(45, 5);
    const struct content new = content(40, 9);
    cut_everywhere(&old, &new);
}

static void a_power_cut_in_any_byte_of_the_first_blob_leaves_none_or_it(void) {
    const struct content none = content(0, 0);
    const struct content new = content(33, 9);
    cut_everywhere(&none, &new);
}

static void a_power_cut_in_any_byte_of_the_longest_blob_leaves_the_old_one_or_it(void) {
    const struct content old = content(256, 5);
    const struct content new = content(256, 6);
    const struct content other = content(256, 7);
    unsigned write = 0;
    while (cut_at(write, (uint8_t)(write * 31u), &old, &new, &other)) {
        write += 3;
    }
    CHECK(write > 256);
}

static void a_store_full_of_anything_is_no_blob_and_no_trap(void) {
    const struct content what = content(100, 1);
    uint32_t seed = 1;
    for (unsigned turn = 0; turn < 200; turn++) {
        bench_start();
        for (unsigned i = 0; i < STORE_BYTES; i++) {
            seed = seed * 1664525u + 1013904223u;
            store.bytes[i] = (uint8_t)(seed >> 24);
        }
        for (unsigned slot = 0; slot < 3; slot++) {
            store.bytes[slot * (STORE_BYTES / 3u)] = 0xA5;
        }
        bench_reset_board(RESET_POWER_ON);
        CHECK_EQUAL(0, read_all(0).length);
        store_blob(0, &what);
        check_stored(0, &what);
    }
}

void blob_tests(void) {
    RUN(nothing_is_stored_at_first);
    RUN(a_blob_of_every_length_is_read_as_it_was_stored);
    RUN(the_two_blobs_do_not_disturb_each_other);
    RUN(bytes_beyond_the_end_are_not_given);
    RUN(a_commit_with_another_crc_stores_nothing);
    RUN(a_commit_of_a_blob_that_was_never_written_is_refused);
    RUN(doing_it_twice_equals_doing_it_once);
    RUN(the_acknowledge_comes_when_it_is_stored_and_within_half_a_second);
    RUN(a_second_one_is_refused_while_the_first_is_under_way);
    RUN(arming_while_a_blob_is_written_spoils_nothing);
    RUN(the_board_reads_its_unique_id_from_its_first_blob);
    RUN(the_age_of_a_blob_rolls_over);
    RUN(a_power_cut_in_any_byte_leaves_the_old_blob_or_the_new_one);
    RUN(a_power_cut_in_any_byte_of_the_first_blob_leaves_none_or_it);
    RUN(a_power_cut_in_any_byte_of_the_longest_blob_leaves_the_old_one_or_it);
    RUN(a_store_full_of_anything_is_no_blob_and_no_trap);
}
