/* Inputs, link, host and reset; what is measured is in watch_test.c, the contactor in contactor_test.c. */
#include "bench.h"
#include "bytes.h"
#include "check.h"
#include "suites.h"

static void armed_and_running(void) {
    bench_arm();
    bench_drive(0, DUTY_FULL, 0);
    bench_drive(1, DUTY_FULL, 0);
    bench_run_alive_ms(600);
    CHECK_EQUAL(STATE_ARMED, board.state);
    CHECK_EQUAL(DUTY_FULL, hardware.duty[0]);
    CHECK_EQUAL(DUTY_FULL, hardware.duty[1]);
}

static void the_start_is_safe_and_names_the_reset_cause(void) {
    bench_start();
    bench_check_safe();
    bench_check_event(EVENT_STARTED, REASON_RESET, RESET_POWER_ON);
    CHECK_EQUAL(1, get_u16(bench_last(MESSAGE_EVENT)->payload));
}

static void a_reset_while_armed_starts_safe_whatever_the_outputs_were(void) {
    bench_start();
    armed_and_running();
    bench_stream(10);
    bench_reset_board(RESET_WATCHDOG);
    bench_check_safe();
    bench_check_event(EVENT_STARTED, REASON_RESET, RESET_WATCHDOG);
    bench_forget();
    bench_run_ms(100);
    CHECK_EQUAL(0, bench_count(MESSAGE_SAMPLE));
}

static void the_boot_id_of_before_the_reset_arms_nothing(void) {
    uint8_t payload[4];
    bench_start();
    put_u32(payload, description.boot_id);
    bench_reset_board(RESET_EXTERNAL);
    bench_check_refused(bench_send(MESSAGE_ARM, payload, 4), MESSAGE_ARM, REFUSE_WRONG_BOOT_ID, 0);
    bench_check_safe();
}

static void a_silent_host_makes_safe_at_the_link_time_out(void) {
    bench_start();
    armed_and_running();
    bench_keep_alive();
    const uint32_t last = board.last_heard;
    while (board.state == STATE_ARMED && hardware.ticks - last < 2000u * TICKS_PER_MS) {
        bench_run_ticks(200);
    }
    const uint32_t after = (hardware.ticks - last) / TICKS_PER_MS;
    CHECK(after >= 750 && after <= 751);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_LINK_LOST, 0);
}

static void keep_alives_hold_the_link_and_nothing_undoes_its_loss(void) {
    bench_start();
    armed_and_running();
    bench_run_alive_ms(5000);
    CHECK_EQUAL(STATE_ARMED, board.state);
    bench_run_ms(800);
    bench_check_safe();
    bench_run_alive_ms(2000);
    bench_check_safe();
    bench_check_refused(bench_drive(0, 1000, 0), MESSAGE_DRIVE, REFUSE_NOT_ARMED, STATE_SAFE);
}

static void a_refused_frame_is_a_sign_of_life_too(void) {
    bench_start();
    bench_arm();
    for (unsigned i = 0; i < 8; i++) {
        bench_run_ms(500);
        bench_send(0x7F, NULL, 0);
    }
    CHECK_EQUAL(STATE_ARMED, board.state);
}

static void foreign_and_own_frames_are_no_sign_of_life(void) {
    const uint8_t event[12] = {0};
    bench_start();
    bench_arm();
    for (unsigned i = 0; i < 20; i++) {
        bench_run_ms(50);
        bench_send_version(2, MESSAGE_KEEP_ALIVE, NULL, 0);
        bench_send_version(2, MESSAGE_HELLO, NULL, 0);
        bench_send(MESSAGE_EVENT, event, sizeof event);
    }
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_LINK_LOST, 0);
}

static void an_open_input_makes_safe(uint8_t left_closed, uint8_t reason) {
    bench_start();
    armed_and_running();
    hardware.inputs = left_closed;
    bench_run_ms(3);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, reason, 0);
    hardware.inputs = INPUTS_WATCHED;
    bench_run_alive_ms(1000);
    bench_check_safe();
    bench_check_acknowledged(bench_arm(), MESSAGE_ARM);
    CHECK_EQUAL(STATE_ARMED, board.state);
    CHECK_EQUAL(0, hardware.duty[0]);
}

static void each_open_input_makes_safe_and_closing_it_arms_nothing(void) {
    an_open_input_makes_safe(INPUTS_WATCHED & ~INPUT_EMERGENCY_STOP, REASON_EMERGENCY_STOP);
    an_open_input_makes_safe(INPUTS_WATCHED & ~INPUT_GUARD, REASON_GUARD_OPEN);
    an_open_input_makes_safe(INPUTS_WATCHED & ~INPUT_LEVEL, REASON_LEVEL_LOW);
    an_open_input_makes_safe(INPUTS_WATCHED & ~INPUT_OVERRIDE, REASON_OVERRIDE_IN);
}

static void all_inputs_open_is_an_emergency_stop(void) {
    an_open_input_makes_safe(0, REASON_EMERGENCY_STOP);
}

static void one_reading_alone_changes_no_input(void) {
    bench_start();
    armed_and_running();
    for (unsigned i = 0; i < 100; i++) {
        hardware.inputs = 0;
        bench_run_ms(1);
        hardware.inputs = INPUTS_WATCHED;
        bench_run_ms(2);
        bench_keep_alive();
    }
    CHECK_EQUAL(STATE_ARMED, board.state);
    CHECK_EQUAL(ALL_CLOSED, board.inputs.agreed);
}

static void bits_that_never_agree_stay_as_they_were(void) {
    bench_start();
    bench_run_ms(5);
    for (unsigned i = 0; i < 50; i++) {
        hardware.inputs = i % 2 == 0 ? INPUT_GUARD : INPUTS_WATCHED & ~INPUT_GUARD;
        bench_run_ms(1);
        CHECK_EQUAL(INPUTS_WATCHED, board.inputs.agreed);
    }
}

static void the_inputs_are_known_from_the_start(void) {
    bench_start();
    hardware.inputs = INPUT_GUARD | INPUT_LEVEL;
    board_start(&board, &description, PROTOCOL_VERSION);
    CHECK_EQUAL(INPUT_GUARD | INPUT_LEVEL, board.inputs.agreed);
}

static void make_safe_stops_at_once_without_a_ramp(void) {
    bench_start();
    armed_and_running();
    bench_check_acknowledged(bench_make_safe(), MESSAGE_MAKE_SAFE);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_HOST_ASKED, 0);
}

static void make_safe_in_safe_is_acknowledged_without_an_event(void) {
    bench_start();
    bench_forget();
    bench_check_acknowledged(bench_make_safe(), MESSAGE_MAKE_SAFE);
    bench_check_safe();
    CHECK_EQUAL(0, bench_count(MESSAGE_EVENT));
}

static void make_safe_is_obeyed_in_the_midst_of_a_ramp(void) {
    bench_start();
    bench_arm();
    bench_drive(0, DUTY_FULL, 0);
    bench_run_ms(100);
    CHECK(hardware.duty[0] > 0);
    bench_make_safe();
    bench_check_safe();
    bench_run_ms(500);
    bench_check_safe();
}

static void a_new_arming_does_not_remember_the_old_set_point(void) {
    bench_start();
    armed_and_running();
    bench_make_safe();
    bench_rest();
    bench_arm();
    bench_run_alive_ms(1000);
    CHECK_EQUAL(STATE_ARMED, board.state);
    CHECK_EQUAL(0, hardware.duty[0]);
    CHECK_EQUAL(0, hardware.duty[1]);
}

static void rules_hold_while_the_tick_counter_rolls_over(void) {
    bench_start_at(0u - 300u * TICKS_PER_MS);
    armed_and_running();
    CHECK(hardware.ticks < 0x80000000u);
    bench_run_alive_ms(2000);
    CHECK_EQUAL(STATE_ARMED, board.state);
    bench_run_ms(800);
    bench_check_safe();

    bench_start_at(0u - 300u * TICKS_PER_MS);
    bench_arm();
    bench_run_ms(725);
    CHECK_EQUAL(STATE_ARMED, board.state);
    bench_run_ms(20);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_LINK_LOST, 0);
}

static void the_watchdog_is_kicked_each_millisecond_and_only_while_time_runs(void) {
    bench_start();
    hardware.watchdog_kicks = 0;
    bench_run_ms(100);
    CHECK(hardware.watchdog_kicks >= 99 && hardware.watchdog_kicks <= 101);
    hardware.watchdog_kicks = 0;
    for (unsigned i = 0; i < 1000; i++) {
        board_poll(&board);
    }
    CHECK(hardware.watchdog_kicks <= 1);
}

void safety_tests(void) {
    RUN(the_start_is_safe_and_names_the_reset_cause);
    RUN(a_reset_while_armed_starts_safe_whatever_the_outputs_were);
    RUN(the_boot_id_of_before_the_reset_arms_nothing);
    RUN(a_silent_host_makes_safe_at_the_link_time_out);
    RUN(keep_alives_hold_the_link_and_nothing_undoes_its_loss);
    RUN(a_refused_frame_is_a_sign_of_life_too);
    RUN(foreign_and_own_frames_are_no_sign_of_life);
    RUN(each_open_input_makes_safe_and_closing_it_arms_nothing);
    RUN(all_inputs_open_is_an_emergency_stop);
    RUN(one_reading_alone_changes_no_input);
    RUN(bits_that_never_agree_stay_as_they_were);
    RUN(the_inputs_are_known_from_the_start);
    RUN(make_safe_stops_at_once_without_a_ramp);
    RUN(make_safe_in_safe_is_acknowledged_without_an_event);
    RUN(make_safe_is_obeyed_in_the_midst_of_a_ramp);
    RUN(a_new_arming_does_not_remember_the_old_set_point);
    RUN(rules_hold_while_the_tick_counter_rolls_over);
    RUN(the_watchdog_is_kicked_each_millisecond_and_only_while_time_runs);
}
