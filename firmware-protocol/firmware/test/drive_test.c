/* Set points and ramps. */
#include "bench.h"
#include "check.h"
#include "suites.h"

/* Runs until the first drive is where it should be; returns the milliseconds it took. */
static unsigned ramp_ms(uint32_t until_duty) {
    unsigned ms = 0;
    while (hardware.duty[0] != until_duty && ms < 5000) {
        bench_run_ms(1);
        ms++;
        if (ms % 250 == 0) {
            bench_keep_alive();
        }
    }
    return ms;
}

static void armed(void) {
    bench_start();
    bench_arm();
}

static void the_ramp_of_the_board_takes_half_a_second_for_the_full_swing(void) {
    armed();
    bench_drive(0, DUTY_FULL, 0);
    const unsigned up = ramp_ms(DUTY_FULL);
    CHECK(up >= 498 && up <= 502);
    bench_drive(0, 0, 0);
    const unsigned down = ramp_ms(0);
    CHECK(down >= 496 && down <= 502);
}

static void a_slower_ramp_is_kept_and_a_faster_one_is_not(void) {
    armed();
    bench_drive(0, 6400, 32);
    const unsigned slow = ramp_ms(6400);
    CHECK(slow >= 194 && slow <= 202);
    bench_drive(0, 0, 65535);
    const unsigned fast = ramp_ms(0);
    CHECK(fast >= 46 && fast <= 51);
}

static void no_millisecond_changes_more_than_the_limit(void) {
    uint32_t before = 0;
    uint32_t most = 0;
    armed();
    bench_drive(0, DUTY_FULL, 65535);
    for (unsigned ms = 0; ms < 600; ms++) {
        before = board.drives[0].level;
        bench_run_ms(1);
        if (ms % 250 == 0) {
            bench_keep_alive();
            before = board.drives[0].level;
        }
        const uint32_t change = board.drives[0].level - before;
        most = change > most ? change : most;
    }
    CHECK_EQUAL(131, most);
    CHECK_EQUAL(DUTY_FULL, board.drives[0].level);
}

static void a_late_poll_is_not_made_up_for_by_a_jump(void) {
    armed();
    bench_drive(0, DUTY_FULL, 0);
    bench_run_ms(10);
    const uint32_t before = board.drives[0].level;
    hardware.ticks += 100u * TICKS_PER_MS;
    for (unsigned i = 0; i < 10; i++) {
        board_poll(&board);
    }
    CHECK_EQUAL(131, board.drives[0].level - before);
}

static void the_acknowledge_comes_before_the_ramp_is_through(void) {
    armed();
    bench_check_acknowledged(bench_drive(0, DUTY_FULL, 0), MESSAGE_DRIVE);
    CHECK(hardware.duty[0] < DUTY_FULL / 10u);
}

static void both_drives_ramp_on_their_own(void) {
    armed();
    bench_drive(0, 1000, 10);
    bench_drive(1, 2000, 100);
    bench_run_ms(150);
    CHECK_EQUAL(1000, board.drives[0].level);
    CHECK_EQUAL(2000, board.drives[1].level);
    CHECK_EQUAL(2000, board.drives[1].target);
}

static void the_same_set_point_twice_equals_once(void) {
    armed();
    bench_drive(0, 20000, 0);
    bench_run_ms(50);
    bench_drive(0, 20000, 0);
    const unsigned rest = ramp_ms(19968);
    CHECK(rest >= 95 && rest <= 105);
    bench_run_ms(10);
    CHECK_EQUAL(20000, board.drives[0].level);
}

void drive_tests(void) {
    RUN(the_ramp_of_the_board_takes_half_a_second_for_the_full_swing);
    RUN(a_slower_ramp_is_kept_and_a_faster_one_is_not);
    RUN(no_millisecond_changes_more_than_the_limit);
    RUN(a_late_poll_is_not_made_up_for_by_a_jump);
    RUN(the_acknowledge_comes_before_the_ramp_is_through);
    RUN(both_drives_ramp_on_their_own);
    RUN(the_same_set_point_twice_equals_once);
}
