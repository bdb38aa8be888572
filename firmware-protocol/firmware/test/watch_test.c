/* The rules about what is measured: none trips below its limit or before its time, each within 20 ms after it. */
#include "bench.h"
#include "check.h"
#include "suites.h"

enum channel { VOLTS = 0, AMPS = 1, PRESSURE = 2, TEMPERATURE = 3 };

struct rule {
    const char *name;
    enum channel channel;
    uint16_t good; /* the last reading that is allowed */
    uint16_t bad;  /* the first that is not */
    uint32_t duty; /* of drive 0 meanwhile */
    unsigned ms;
    enum safe_reason reason;
};

static const struct rule rules[] = {
    {"over-current", AMPS, 49152, 49153, 0, 50, REASON_OVER_CURRENT},
    {"over-current, driven", AMPS, 49152, 49153, 65536, 50, REASON_OVER_CURRENT},
    {"over-pressure", PRESSURE, 58982, 58983, 0, 100, REASON_OVER_PRESSURE},
    {"dead-head", PRESSURE, 52429, 52430, 256, 5000, REASON_DEAD_HEAD},
    {"over-voltage", VOLTS, 55706, 55707, 0, 50, REASON_OVER_VOLTAGE},
    {"dry run", AMPS, 4000, 3999, 19968, 5000, REASON_DRY_RUN},
};

static void healthy(void) {
    hardware.analogs[VOLTS] = 45000;
    hardware.analogs[AMPS] = 10000;
    hardware.analogs[PRESSURE] = 10000;
    hardware.analogs[TEMPERATURE] = 65535;
}

static void armed_with(uint32_t duty) {
    bench_start();
    healthy();
    bench_tighten(LIMIT_DRY_AMPS, 4000);
    bench_arm();
    bench_drive(0, duty, 0);
    bench_run_alive_ms(600);
    CHECK_EQUAL(STATE_ARMED, board.state);
}

/* Milliseconds until safe, or `most`. */
static unsigned ms_until_safe(unsigned most) {
    const uint32_t began = hardware.ticks;
    uint32_t alive = began;
    bench_keep_alive();
    while (board.state == STATE_ARMED && hardware.ticks - began < most * TICKS_PER_MS) {
        if (hardware.ticks - alive > 250u * TICKS_PER_MS) {
            bench_keep_alive();
            alive = hardware.ticks;
        }
        bench_run_ticks(200);
    }
    return (hardware.ticks - began) / TICKS_PER_MS;
}

static void each_rule_trips_after_its_time_and_within_twenty_milliseconds(void) {
    for (size_t i = 0; i < sizeof rules / sizeof *rules; i++) {
        const struct rule *const rule = &rules[i];
        check_context(rule->name);
        armed_with(rule->duty);
        hardware.analogs[rule->channel] = rule->bad;
        const uint32_t before = hardware.ticks;
        ms_until_safe(rule->ms + 1000u);
        const uint32_t took = hardware.ticks - before;
        CHECK(took >= rule->ms * TICKS_PER_MS && took <= (rule->ms + 20u) * TICKS_PER_MS);
        bench_check_safe();
        bench_check_event(EVENT_MADE_SAFE, (uint8_t)rule->reason, rule->bad);
    }
}

static void the_reading_at_the_limit_is_allowed_for_ever(void) {
    for (size_t i = 0; i < sizeof rules / sizeof *rules; i++) {
        const struct rule *const rule = &rules[i];
        check_context(rule->name);
        armed_with(rule->duty);
        hardware.analogs[rule->channel] = rule->good;
        const unsigned most = 3u * rule->ms + 1000u;
        CHECK_EQUAL(most, ms_until_safe(most));
        CHECK_EQUAL(STATE_ARMED, board.state);
    }
}

static void a_time_that_is_just_too_short_is_allowed_however_often(void) {
    for (size_t i = 0; i < sizeof rules / sizeof *rules; i++) {
        const struct rule *const rule = &rules[i];
        check_context(rule->name);
        armed_with(rule->duty);
        for (unsigned turn = 0; turn < 5; turn++) {
            hardware.analogs[rule->channel] = rule->bad;
            const unsigned most = rule->ms - 3u;
            CHECK_EQUAL(most, ms_until_safe(most));
            hardware.analogs[rule->channel] = rule->good;
            bench_run_ms(2);
        }
        CHECK_EQUAL(STATE_ARMED, board.state);
    }
}

static void dead_head_and_dry_run_need_a_drive(void) {
    armed_with(0);
    hardware.analogs[PRESSURE] = 55000;
    hardware.analogs[AMPS] = 0;
    CHECK_EQUAL(12000, ms_until_safe(12000));
    /* One step below 30 %. */
    armed_with(19456);
    hardware.analogs[AMPS] = 0;
    CHECK_EQUAL(12000, ms_until_safe(12000));
}

static void dead_head_counts_the_second_drive_too_and_dry_run_does_not(void) {
    armed_with(0);
    bench_drive(1, 65536, 0);
    bench_run_alive_ms(600);
    hardware.analogs[AMPS] = 0;
    CHECK_EQUAL(12000, ms_until_safe(12000));
    hardware.analogs[PRESSURE] = 55000;
    ms_until_safe(6000);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_DEAD_HEAD, 55000);
}

static void the_dry_run_limit_of_zero_never_trips(void) {
    bench_start();
    healthy();
    hardware.analogs[AMPS] = 0;
    bench_arm();
    bench_drive(0, DUTY_FULL, 0);
    CHECK_EQUAL(12000, ms_until_safe(12000));
}

static void a_limit_time_of_zero_trips_at_once(void) {
    armed_with(0);
    bench_tighten(LIMIT_AMPS_MS, 0);
    hardware.analogs[AMPS] = 49153;
    CHECK(ms_until_safe(1000) <= 2);
    bench_check_event(EVENT_MADE_SAFE, REASON_OVER_CURRENT, 49153);
}

static void run_time_counts_driven_time_only(void) {
    armed_with(0);
    bench_tighten(LIMIT_RUN_MS, 10000);
    CHECK_EQUAL(15000, ms_until_safe(15000));
    for (unsigned i = 0; i < 3; i++) {
        bench_drive(1, 1000, 0);
        CHECK_EQUAL(3000, ms_until_safe(3000));
        bench_drive(1, 0, 0);
        CHECK_EQUAL(5000, ms_until_safe(5000));
    }
    bench_drive(1, 1000, 0);
    const unsigned ms = ms_until_safe(5000);
    /* Three ramps down of 8 ms each were driven too. */
    CHECK(ms >= 940 && ms <= 1020);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_RUN_TIME, 0);
}

static void run_time_begins_anew_with_each_arming(void) {
    armed_with(0);
    bench_tighten(LIMIT_RUN_MS, 2000);
    for (unsigned i = 0; i < 4; i++) {
        bench_drive(0, 1000, 0);
        CHECK_EQUAL(1800, ms_until_safe(1800));
        bench_make_safe();
        bench_rest();
        bench_arm();
    }
    CHECK_EQUAL(STATE_ARMED, board.state);
}

static void the_longest_run_time_is_kept_to_the_second(void) {
    armed_with(65536);
    description.limits[LIMIT_RUN_MS] = 7200000;
    board.watch.run_ms = 7200000u - 1000u;
    const unsigned ms = ms_until_safe(3000);
    CHECK(ms >= 999 && ms <= 1020);
    bench_check_event(EVENT_MADE_SAFE, REASON_RUN_TIME, 0);
}

static void nothing_is_judged_in_safe_nor_carried_into_the_next_arming(void) {
    bench_start();
    healthy();
    hardware.analogs[AMPS] = 60000;
    bench_forget();
    bench_run_ms(200);
    CHECK_EQUAL(0, bench_count(MESSAGE_EVENT));
    bench_arm();
    bench_run_ms(20);
    CHECK_EQUAL(STATE_ARMED, board.state);
    bench_make_safe();
    bench_rest();
    const uint32_t before = hardware.ticks;
    bench_arm();
    ms_until_safe(1000);
    const uint32_t took = hardware.ticks - before;
    CHECK(took >= 50u * TICKS_PER_MS && took <= 70u * TICKS_PER_MS);
}

static void a_board_that_cannot_measure_does_not_watch(void) {
    bench_start();
    for (unsigned i = 0; i < ANALOGS_MAX; i++) {
        description.roles[i] = i % 2 == 0 ? ROLE_NONE : ROLE_OTHER;
        hardware.analogs[i] = 65535;
    }
    bench_arm();
    bench_drive(0, DUTY_FULL, 0);
    CHECK_EQUAL(12000, ms_until_safe(12000));
}

static void a_role_is_found_on_whatever_channel_it_is(void) {
    bench_start();
    healthy();
    description.roles[0] = ROLE_TEMPERATURE;
    description.roles[1] = ROLE_OTHER;
    description.roles[3] = ROLE_AMPS;
    hardware.analogs[3] = 0;
    bench_arm();
    hardware.analogs[0] = 65535;
    hardware.analogs[1] = 65535;
    CHECK_EQUAL(500, ms_until_safe(500));
    hardware.analogs[3] = 60000;
    ms_until_safe(500);
    bench_check_event(EVENT_MADE_SAFE, REASON_OVER_CURRENT, 60000);
}

static void streaming_hides_nothing(void) {
    armed_with(0);
    bench_stream(1);
    hardware.analogs[AMPS] = 60000;
    const unsigned ms = ms_until_safe(1000);
    CHECK(ms >= 49 && ms <= 70);
    bench_check_safe();
}

static void the_rules_hold_while_board_time_rolls_over(void) {
    bench_start_at(0u - 1000u * TICKS_PER_MS);
    healthy();
    bench_arm();
    bench_drive(0, 1000, 0);
    bench_run_alive_ms(500);
    hardware.analogs[PRESSURE] = 55000;
    const unsigned ms = ms_until_safe(7000);
    CHECK(ms >= 4980 && ms <= 5020);
    CHECK(hardware.ticks < 0x80000000u);
    bench_check_event(EVENT_MADE_SAFE, REASON_DEAD_HEAD, 55000);
}

void watch_tests(void) {
    RUN(each_rule_trips_after_its_time_and_within_twenty_milliseconds);
    RUN(the_reading_at_the_limit_is_allowed_for_ever);
    RUN(a_time_that_is_just_too_short_is_allowed_however_often);
    RUN(dead_head_and_dry_run_need_a_drive);
    RUN(dead_head_counts_the_second_drive_too_and_dry_run_does_not);
    RUN(the_dry_run_limit_of_zero_never_trips);
    RUN(a_limit_time_of_zero_trips_at_once);
    RUN(run_time_counts_driven_time_only);
    RUN(run_time_begins_anew_with_each_arming);
    RUN(the_longest_run_time_is_kept_to_the_second);
    RUN(nothing_is_judged_in_safe_nor_carried_into_the_next_arming);
    RUN(a_board_that_cannot_measure_does_not_watch);
    RUN(a_role_is_found_on_whatever_channel_it_is);
    RUN(streaming_hides_nothing);
    RUN(the_rules_hold_while_board_time_rolls_over);
}
