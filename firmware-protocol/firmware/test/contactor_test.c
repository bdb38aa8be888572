/* The contactor's proof: that its feedback follows it, both ways. */
#include "bench.h"
#include "check.h"
#include "suites.h"

/* Tenths of a millisecond until the board leaves the state, or 10000. */
static unsigned tenths_in(uint8_t state) {
    unsigned tenths = 0;
    while (board.state == state && tenths < 10000) {
        bench_run_ticks(TICKS_PER_MS / 10u);
        if (++tenths % 2500 == 0) {
            bench_keep_alive();
        }
    }
    return tenths;
}

static void arming_is_acknowledged_while_proving_and_the_event_tells_when_it_is_armed(void) {
    bench_start();
    bench_forget();
    bench_check_acknowledged(bench_send_arm(), MESSAGE_ARM);
    CHECK_EQUAL(STATE_PROVING, board.state);
    CHECK(hardware.contactor);
    CHECK(!hardware.lamp);
    CHECK_EQUAL(0, bench_count(MESSAGE_EVENT));
    bench_run_ms(15);
    CHECK_EQUAL(STATE_ARMED, board.state);
    CHECK(hardware.lamp);
    bench_check_event(EVENT_ARMED, REASON_NONE, 0);
}

static void a_feedback_that_stays_open_for_200_ms_ends_in_safe(void) {
    bench_start();
    hardware.feedback = 0;
    bench_send_arm();
    CHECK_EQUAL(STATE_PROVING, board.state);
    const unsigned tenths = tenths_in(STATE_PROVING);
    CHECK(tenths >= 1980 && tenths <= 2020);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_CONTACTOR, CONTACTOR_DID_NOT_CLOSE);
    bench_run_ms(500);
    bench_check_safe();
}

static void a_feedback_that_closes_at_195_ms_is_in_time(void) {
    bench_start();
    hardware.feedback = 0;
    bench_send_arm();
    bench_run_ms(195);
    CHECK_EQUAL(STATE_PROVING, board.state);
    hardware.feedback = 1;
    bench_run_ms(3);
    CHECK_EQUAL(STATE_ARMED, board.state);
}

static void a_feedback_that_opens_while_armed_ends_in_safe(void) {
    bench_start();
    bench_arm();
    bench_drive(0, DUTY_FULL, 0);
    bench_run_alive_ms(300);
    hardware.feedback = 0;
    bench_run_ms(3);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_CONTACTOR, CONTACTOR_OPENED);
}

static void a_feedback_that_stays_closed_for_200_ms_locks(void) {
    bench_start();
    bench_arm();
    hardware.feedback = 1;
    bench_make_safe();
    bench_check_safe();
    const unsigned tenths = tenths_in(STATE_SAFE);
    CHECK(tenths >= 1950 && tenths <= 2020);
    bench_check_locked();
    bench_check_event(EVENT_LOCKED, REASON_HARDWARE, TEST_FEEDBACK);
    bench_check_refused(bench_send_arm(), MESSAGE_ARM, REFUSE_LOCKED, TEST_FEEDBACK);
}

static void locked_is_left_by_a_reset_only(void) {
    bench_start();
    bench_arm();
    hardware.feedback = 1;
    bench_make_safe();
    bench_run_ms(250);
    bench_check_locked();
    hardware.feedback = AUTO_FEEDBACK;
    bench_make_safe();
    bench_run_alive_ms(2000);
    bench_check_locked();
    bench_check_refused(bench_send_arm(), MESSAGE_ARM, REFUSE_LOCKED, TEST_FEEDBACK);
    bench_reset_board(RESET_EXTERNAL);
    bench_check_safe();
    bench_arm();
    CHECK_EQUAL(STATE_ARMED, board.state);
}

static void a_feedback_that_opens_at_195_ms_does_not_lock(void) {
    bench_start();
    bench_arm();
    hardware.feedback = 1;
    bench_make_safe();
    bench_run_ms(192);
    bench_check_safe();
    hardware.feedback = 0;
    bench_run_ms(500);
    bench_check_safe();
    hardware.feedback = AUTO_FEEDBACK;
    bench_arm();
    CHECK_EQUAL(STATE_ARMED, board.state);
}

static void every_reason_ends_the_proof(void) {
    bench_start();
    hardware.feedback = 0;
    bench_send_arm();
    bench_make_safe();
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_HOST_ASKED, 0);
    bench_send_arm();
    hardware.inputs = INPUTS_WATCHED & ~INPUT_LEVEL;
    bench_run_ms(3);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_LEVEL_LOW, 0);
    hardware.inputs = INPUTS_WATCHED;
    hardware.analogs[0] = 65000;
    bench_run_ms(3);
    bench_send_arm();
    bench_run_ms(60);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_OVER_VOLTAGE, 65000);
    hardware.analogs[0] = 0;
    bench_tighten(LIMIT_LINK_MS, 100);
    bench_send_arm();
    bench_run_ms(110);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_LINK_LOST, 0);
}

static void arming_again_while_proving_does_not_lengthen_the_proof(void) {
    bench_start();
    hardware.feedback = 0;
    bench_send_arm();
    for (unsigned i = 0; i < 15; i++) {
        bench_run_ms(10);
        bench_check_acknowledged(bench_send_arm(), MESSAGE_ARM);
    }
    CHECK_EQUAL(STATE_PROVING, board.state);
    bench_run_ms(20);
    bench_check_safe();
}

static void a_contact_that_is_closed_by_hand_in_safe_refuses_the_arming_but_locks_nothing(void) {
    bench_start();
    hardware.feedback = 1;
    bench_run_ms(1000);
    bench_check_safe();
    bench_check_refused(bench_send_arm(), MESSAGE_ARM, REFUSE_CONTACTOR, ALL_CLOSED);
    bench_run_ms(1000);
    bench_check_safe();
    CHECK(!hardware.contactor);
}

static void a_feedback_that_is_closed_at_power_up_refuses_the_arming_but_locks_nothing(void) {
    bench_start();
    hardware.feedback = 1;
    bench_reset_board(RESET_POWER_ON);
    bench_run_ms(1000);
    bench_check_safe();
    bench_check_refused(bench_send_arm(), MESSAGE_ARM, REFUSE_CONTACTOR, ALL_CLOSED);
    bench_make_safe();
    bench_run_ms(1000);
    bench_check_safe();
    hardware.feedback = AUTO_FEEDBACK;
    bench_run_ms(3);
    bench_arm();
    CHECK_EQUAL(STATE_ARMED, board.state);
}

void contactor_tests(void) {
    RUN(arming_is_acknowledged_while_proving_and_the_event_tells_when_it_is_armed);
    RUN(a_feedback_that_stays_open_for_200_ms_ends_in_safe);
    RUN(a_feedback_that_closes_at_195_ms_is_in_time);
    RUN(a_feedback_that_opens_while_armed_ends_in_safe);
    RUN(a_feedback_that_stays_closed_for_200_ms_locks);
    RUN(locked_is_left_by_a_reset_only);
    RUN(a_feedback_that_opens_at_195_ms_does_not_lock);
    RUN(every_reason_ends_the_proof);
    RUN(arming_again_while_proving_does_not_lengthen_the_proof);
    RUN(a_feedback_that_is_closed_at_power_up_refuses_the_arming_but_locks_nothing);
    RUN(a_contact_that_is_closed_by_hand_in_safe_refuses_the_arming_but_locks_nothing);
}
