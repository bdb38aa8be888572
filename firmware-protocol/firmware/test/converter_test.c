/* The converter, whose readings the limits live by: one that stands still locks the board. */
#include "bench.h"
#include "check.h"
#include "suites.h"

/* Runs until the board leaves the state, or so many milliseconds; returns the milliseconds. */
static unsigned ms_in(uint8_t state, unsigned most) {
    unsigned ms = 0;
    while (board.state == state && ms < most) {
        bench_run_ms(1);
        ms++;
    }
    return ms;
}

static void a_converter_that_stands_still_while_armed_locks_after_fifty_milliseconds(void) {
    bench_start();
    bench_arm();
    bench_drive(0, DUTY_FULL, 0);
    bench_run_ms(50);
    CHECK(hardware.duty[0] > 0);
    bench_forget();
    hardware.conversions_per_ms = 0;
    const unsigned ms = ms_in(STATE_ARMED, 200);
    CHECK(ms >= 49 && ms <= 52);
    bench_check_locked();
    bench_check_event(EVENT_LOCKED, REASON_HARDWARE, TEST_CONVERTER);
    CHECK_EQUAL(1, bench_count(MESSAGE_EVENT));
    hardware.conversions_per_ms = 2;
    bench_run_ms(300);
    bench_check_locked();
    bench_check_refused(bench_send_arm(), MESSAGE_ARM, REFUSE_LOCKED, TEST_CONVERTER);
    bench_reset_board(RESET_EXTERNAL);
    bench_arm();
    CHECK_EQUAL(STATE_ARMED, board.state);
}

static void a_converter_that_stands_still_while_proving_locks(void) {
    bench_start();
    hardware.feedback = 0;
    hardware.conversions_per_ms = 0;
    bench_send_arm();
    const unsigned ms = ms_in(STATE_PROVING, 300);
    CHECK(ms >= 48 && ms <= 52);
    bench_check_locked();
    bench_check_event(EVENT_LOCKED, REASON_HARDWARE, TEST_CONVERTER);
}

static void the_contactor_is_proven_to_open_after_such_a_lock_too(void) {
    bench_start();
    bench_arm();
    hardware.feedback = 1;
    hardware.conversions_per_ms = 0;
    bench_run_ms(100);
    bench_check_locked();
    bench_run_ms(300);
    bench_check_refused(bench_send_arm(), MESSAGE_ARM, REFUSE_LOCKED, TEST_CONVERTER | TEST_FEEDBACK);
    bench_run_ms(3);
    CHECK_EQUAL(3, bench_count(MESSAGE_EVENT));
}

static void a_pause_of_less_than_fifty_milliseconds_changes_nothing(void) {
    bench_start();
    bench_arm();
    for (unsigned i = 0; i < 5; i++) {
        hardware.conversions_per_ms = 0;
        bench_run_ms(45);
        hardware.conversions_per_ms = 2;
        bench_run_ms(5);
    }
    CHECK_EQUAL(STATE_ARMED, board.state);
}

static void in_safe_nobody_waits_for_the_converter(void) {
    bench_start();
    hardware.conversions_per_ms = 0;
    bench_run_ms(1000);
    bench_check_safe();
    hardware.conversions_per_ms = 2;
    bench_arm();
    CHECK_EQUAL(STATE_ARMED, board.state);
}

static void a_board_without_analogue_channels_has_no_converter_to_watch(void) {
    bench_start();
    description.analogs = 0;
    hardware.conversions_per_ms = 0;
    bench_arm();
    bench_run_alive_ms(1000);
    CHECK_EQUAL(STATE_ARMED, board.state);
}

void converter_tests(void) {
    RUN(a_converter_that_stands_still_while_armed_locks_after_fifty_milliseconds);
    RUN(a_converter_that_stands_still_while_proving_locks);
    RUN(the_contactor_is_proven_to_open_after_such_a_lock_too);
    RUN(a_pause_of_less_than_fifty_milliseconds_changes_nothing);
    RUN(in_safe_nobody_waits_for_the_converter);
    RUN(a_board_without_analogue_channels_has_no_converter_to_watch);
}
