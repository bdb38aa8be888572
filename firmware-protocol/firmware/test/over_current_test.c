/* The over-current rule: above 49152 on channel 1 for 50 ms. */
#include "bench.h"
#include "check.h"
#include "suites.h"

static void armed_with_amps(uint16_t amps) {
    bench_start();
    bench_arm();
    bench_run_ms(10);
    hardware.analogs[1] = amps;
}

/* Milliseconds until safe, or 1000. */
static unsigned trip_ms(void) {
    unsigned ms = 0;
    while (board.state == STATE_ARMED && ms < 1000) {
        bench_run_ms(1);
        if (++ms % 250 == 0) {
            bench_keep_alive();
        }
    }
    return ms;
}

static void current_above_the_limit_for_its_time_makes_safe(void) {
    armed_with_amps(49153);
    const unsigned ms = trip_ms();
    CHECK(ms >= 50 && ms <= 53);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_OVER_CURRENT, 49153);
}

static void current_at_the_limit_is_allowed(void) {
    armed_with_amps(49152);
    CHECK_EQUAL(1000, trip_ms());
}

static void a_surge_shorter_than_the_time_is_allowed_however_often(void) {
    armed_with_amps(65472);
    for (unsigned i = 0; i < 20; i++) {
        hardware.analogs[1] = 65472;
        bench_run_ms(45);
        hardware.analogs[1] = 1000;
        bench_run_ms(5);
        bench_keep_alive();
    }
    CHECK_EQUAL(STATE_ARMED, board.state);
}

static void the_event_names_the_highest_mean(void) {
    armed_with_amps(50000);
    bench_run_ms(20);
    hardware.analogs[1] = 61000;
    bench_run_ms(10);
    hardware.analogs[1] = 52000;
    trip_ms();
    bench_check_event(EVENT_MADE_SAFE, REASON_OVER_CURRENT, 61000);
}

static void current_is_not_judged_in_safe_nor_carried_into_the_next_arming(void) {
    bench_start();
    hardware.analogs[1] = 60000;
    bench_forget();
    bench_run_ms(200);
    CHECK_EQUAL(0, bench_count(MESSAGE_EVENT));
    bench_arm();
    bench_run_ms(30);
    CHECK_EQUAL(STATE_ARMED, board.state);
    bench_make_safe();
    bench_arm();
    const unsigned ms = trip_ms();
    CHECK(ms >= 48 && ms <= 53);
}

static void other_channels_do_not_trip(void) {
    armed_with_amps(0);
    hardware.analogs[0] = 65472;
    hardware.analogs[2] = 65472;
    hardware.analogs[3] = 65472;
    CHECK_EQUAL(1000, trip_ms());
}

static void a_board_without_a_current_channel_never_trips(void) {
    bench_start();
    bench_identity.current_channel = NO_CURRENT_CHANNEL;
    bench_arm();
    for (unsigned i = 0; i < ANALOGS_MAX; i++) {
        hardware.analogs[i] = 65472;
    }
    CHECK_EQUAL(1000, trip_ms());
}

static void streaming_does_not_hide_an_over_current(void) {
    armed_with_amps(0);
    bench_stream(STREAM_PERIOD_MIN_MS);
    hardware.analogs[1] = 60000;
    const unsigned ms = trip_ms();
    CHECK(ms >= 49 && ms <= 54);
    bench_check_safe();
}

void over_current_tests(void) {
    RUN(current_above_the_limit_for_its_time_makes_safe);
    RUN(current_at_the_limit_is_allowed);
    RUN(a_surge_shorter_than_the_time_is_allowed_however_often);
    RUN(the_event_names_the_highest_mean);
    RUN(current_is_not_judged_in_safe_nor_carried_into_the_next_arming);
    RUN(other_channels_do_not_trip);
    RUN(a_board_without_a_current_channel_never_trips);
    RUN(streaming_does_not_hide_an_over_current);
}
