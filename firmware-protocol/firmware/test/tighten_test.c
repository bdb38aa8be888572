/* Limits: read, tightened, never widened, and the board's own again after a reset. */
#include "bench.h"
#include "bytes.h"
#include "check.h"
#include "suites.h"

static void check_limits(const uint32_t wanted[LIMITS]) {
    bench_run_ms(5);
    const struct heard *const limits = bench_last(MESSAGE_LIMITS);
    if (CHECK(limits != NULL)) {
        CHECK_EQUAL(4 * LIMITS, limits->length);
        for (unsigned i = 0; i < LIMITS; i++) {
            CHECK_EQUAL(wanted[i], get_u32(limits->payload + 4u * i));
        }
    }
    bench_forget();
}

static void limits_are_told(void) {
    const uint32_t own[LIMITS] = {49152, 50, 2400000, 58982, 100, 52429, 5000, 0, 5000, 55706, 50, 750};
    bench_start();
    bench_send(MESSAGE_READ_LIMITS, NULL, 0);
    check_limits(own);
}

static void each_limit_can_be_tightened_and_not_widened_again(void) {
    uint32_t wanted[LIMITS] = {49152, 50, 2400000, 58982, 100, 52429, 5000, 0, 5000, 55706, 50, 750};
    bench_start();
    for (uint8_t i = 0; i < LIMITS; i++) {
        const uint32_t before = wanted[i];
        const uint32_t tighter = i == LIMIT_DRY_AMPS ? before + 1u : before - 1u;
        wanted[i] = tighter;
        bench_tighten(i, tighter);
        check_limits(wanted);
        bench_tighten(i, tighter);
        check_limits(wanted);
        bench_check_refused(bench_tighten(i, before), MESSAGE_TIGHTEN, REFUSE_WOULD_WIDEN, (int32_t)tighter);
        bench_forget();
        bench_send(MESSAGE_READ_LIMITS, NULL, 0);
        check_limits(wanted);
    }
}

static void limits_hold_in_the_next_arming_and_until_the_reset(void) {
    uint32_t wanted[LIMITS] = {49152, 50, 2400000, 58982, 100, 52429, 5000, 0, 5000, 55706, 50, 750};
    bench_start();
    bench_arm();
    bench_tighten(LIMIT_AMPS, 1000);
    bench_make_safe();
    bench_rest();
    bench_arm();
    hardware.analogs[1] = 1001;
    bench_run_ms(70);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_OVER_CURRENT, 1001);
    bench_reset_board(RESET_WATCHDOG);
    bench_send(MESSAGE_READ_LIMITS, NULL, 0);
    check_limits(wanted);
}

static void a_shorter_link_time_out_is_kept(void) {
    bench_start();
    bench_tighten(LIMIT_LINK_MS, 100);
    bench_arm();
    bench_run_ms(80);
    CHECK_EQUAL(STATE_ARMED, board.state);
    bench_run_ms(20);
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_LINK_LOST, 0);
}

void tighten_tests(void) {
    RUN(limits_are_told);
    RUN(each_limit_can_be_tightened_and_not_widened_again);
    RUN(limits_hold_in_the_next_arming_and_until_the_reset);
    RUN(a_shorter_link_time_out_is_kept);
}
