/* The self-test: what is tried, what locks, and what waits for it. */
#include "bench.h"
#include "bytes.h"
#include "check.h"
#include "crc16.h"
#include "suites.h"

static void check_result(uint16_t tried, uint16_t failed) {
    bench_run_ms(5);
    const struct heard *const result = bench_last(MESSAGE_SELF_TEST_RESULT);
    if (CHECK(result != NULL)) {
        CHECK_EQUAL(4, result->length);
        CHECK_EQUAL(tried, get_u16(result->payload));
        CHECK_EQUAL(failed, get_u16(result->payload + 2));
    }
}

static void a_healthy_board_says_what_it_tried(void) {
    bench_start();
    hardware.self_test.tried = TEST_PROGRAM_MEMORY | TEST_CLOCK;
    bench_send(MESSAGE_SELF_TEST, NULL, 0);
    check_result(TEST_PROGRAM_MEMORY | TEST_CLOCK | TEST_BLOBS | TEST_FEEDBACK, 0);
    bench_check_safe();
}

static void each_vital_failure_locks(void) {
    static const uint16_t vital[] = {TEST_PROGRAM_MEMORY, TEST_WORKING_MEMORY, TEST_CONVERTER, TEST_CLOCK};
    for (size_t i = 0; i < sizeof vital / sizeof *vital; i++) {
        bench_start();
        hardware.self_test.tried = vital[i];
        hardware.self_test.failed = vital[i];
        bench_send(MESSAGE_SELF_TEST, NULL, 0);
        check_result(vital[i] | TEST_BLOBS | TEST_FEEDBACK, vital[i]);
        bench_check_locked();
        bench_check_event(EVENT_LOCKED, REASON_HARDWARE, vital[i]);
    }
}

static void a_closed_feedback_fails_but_does_not_lock(void) {
    bench_start();
    hardware.feedback = 1;
    bench_run_ms(5);
    bench_send(MESSAGE_SELF_TEST, NULL, 0);
    check_result(TEST_BLOBS | TEST_FEEDBACK, TEST_FEEDBACK);
    bench_check_safe();
}

static void a_damaged_blob_fails_but_does_not_lock(void) {
    const uint8_t bytes[4] = {1, 2, 3, 4};
    bench_start();
    bench_blob_write(1, 0, bytes, sizeof bytes);
    bench_run_ms(50);
    bench_blob_commit(1, 4, crc16(bytes, 4));
    bench_run_ms(50);
    bench_send(MESSAGE_SELF_TEST, NULL, 0);
    check_result(TEST_BLOBS | TEST_FEEDBACK, 0);
    for (unsigned i = 0; i < STORE_BYTES; i++) {
        if (store.bytes[i] == 3) {
            store.bytes[i] = 2;
        }
    }
    bench_forget();
    bench_send(MESSAGE_SELF_TEST, NULL, 0);
    check_result(TEST_BLOBS | TEST_FEEDBACK, TEST_BLOBS);
    bench_check_safe();
}

static void arming_waits_for_the_end_of_the_test(void) {
    bench_start();
    hardware.self_test_ms = 300;
    bench_send(MESSAGE_SELF_TEST, NULL, 0);
    bench_run_ms(100);
    bench_check_refused(bench_send_arm(), MESSAGE_ARM, REFUSE_BUSY, 0);
    bench_check_refused(bench_send(MESSAGE_SELF_TEST, NULL, 0), MESSAGE_SELF_TEST, REFUSE_BUSY, 0);
    CHECK_EQUAL(0, bench_count(MESSAGE_SELF_TEST_RESULT));
    bench_run_ms(200);
    CHECK_EQUAL(1, bench_count(MESSAGE_SELF_TEST_RESULT));
    bench_arm();
    CHECK_EQUAL(STATE_ARMED, board.state);
}

static void a_locked_board_can_be_tested_again_and_stays_locked(void) {
    bench_start();
    hardware.self_test.tried = TEST_CLOCK;
    hardware.self_test.failed = TEST_CLOCK;
    bench_send(MESSAGE_SELF_TEST, NULL, 0);
    bench_run_ms(5);
    hardware.self_test.failed = 0;
    bench_forget();
    bench_send(MESSAGE_SELF_TEST, NULL, 0);
    check_result(TEST_CLOCK | TEST_BLOBS | TEST_FEEDBACK, 0);
    bench_check_locked();
    CHECK_EQUAL(0, bench_count(MESSAGE_EVENT));
}

void self_test_tests(void) {
    RUN(a_healthy_board_says_what_it_tried);
    RUN(each_vital_failure_locks);
    RUN(a_closed_feedback_fails_but_does_not_lock);
    RUN(a_damaged_blob_fails_but_does_not_lock);
    RUN(arming_waits_for_the_end_of_the_test);
    RUN(a_locked_board_can_be_tested_again_and_stays_locked);
}
