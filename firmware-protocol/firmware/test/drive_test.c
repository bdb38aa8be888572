/* Set points and ramps. */
#include "bench.h"
#include "bench_line.h"
#include "bytes.h"
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

static void a_long_stall_is_not_made_up_for_by_a_jump(void) {
    armed();
    bench_drive(0, DUTY_FULL, 0);
    bench_run_ms(10);
    const uint32_t before = board.drives[0].level;
    hardware.ticks += 100u * TICKS_PER_MS;
    for (unsigned i = 0; i < 10; i++) {
        board_poll(&board);
    }
    CHECK_EQUAL(4 * 131, board.drives[0].level - before);
}

static void a_ramp_takes_its_time_however_seldom_the_board_is_polled(void) {
    static const uint32_t every_ticks[] = {TICKS_PER_MS / 4u, 3000u, 3u * TICKS_PER_MS, 7900u};
    for (size_t i = 0; i < sizeof every_ticks / sizeof *every_ticks; i++) {
        armed();
        bench_drive(0, DUTY_FULL, 0);
        const uint32_t began = hardware.ticks;
        const uint32_t level = board.drives[0].level;
        while (hardware.ticks - began < 400u * TICKS_PER_MS) {
            hardware.ticks += every_ticks[i];
            board_poll(&board);
        }
        const uint32_t ms = (hardware.ticks - began) / TICKS_PER_MS;
        CHECK(board.drives[0].level - level >= (ms - 1u) * 131u);
        CHECK(board.drives[0].level - level <= (ms + 1u) * 131u);
    }
}

static void the_time_before_a_set_point_came_moves_nothing(void) {
    uint8_t wire[FRAME_WIRE_MAX(7)];
    uint8_t payload[7];
    armed();
    put_u16(put_u32(put_u8(payload, 0), DUTY_FULL), 0);
    const struct frame frame = {PROTOCOL_VERSION, MESSAGE_DRIVE, 0, sizeof payload, payload};
    const struct frame_written written = frame_encode(&frame, wire, sizeof wire);
    for (size_t i = 0; i < written.length; i++) {
        bench_line_put(wire[i]);
    }
    hardware.ticks += 3u * TICKS_PER_MS;
    board_poll(&board);
    CHECK_EQUAL(DUTY_FULL, board.drives[0].target);
    CHECK_EQUAL(0, board.drives[0].level);
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

/* Lowest and highest duty of a drive, and how often it turned, over so many milliseconds. */
struct swing {
    uint32_t lowest;
    uint32_t highest;
    unsigned turns;
};

static struct swing watch_swing(uint8_t channel, unsigned ms) {
    struct swing swing = {hardware.duty[channel], hardware.duty[channel], 0};
    for (unsigned i = 0; i < 10u * ms; i++) {
        const uint32_t before = hardware.duty[channel];
        bench_run_ticks(TICKS_PER_MS / 10u);
        const uint32_t duty = hardware.duty[channel];
        swing.turns += duty == before ? 0u : 1u;
        swing.lowest = duty < swing.lowest ? duty : swing.lowest;
        swing.highest = duty > swing.highest ? duty : swing.highest;
        if (i % 2500 == 0) {
            bench_keep_alive();
        }
    }
    return swing;
}

static void dither_swings_about_the_duty_at_its_frequency(void) {
    armed();
    bench_drive(1, 32768, 0);
    bench_run_ms(300);
    bench_check_acknowledged(bench_dither(1, 2560, 100), MESSAGE_DITHER);
    const struct swing swing = watch_swing(1, 1000);
    CHECK_EQUAL(32768 - 2560, swing.lowest);
    CHECK_EQUAL(32768 + 2560, swing.highest);
    CHECK(swing.turns >= 198 && swing.turns <= 202);
    CHECK_EQUAL(32768, drive_applied(&board.drives[1], 1));
    CHECK_EQUAL(0, hardware.duty[0]);
}

static void dither_is_held_within_zero_and_fully_on(void) {
    armed();
    bench_drive(1, 1024, 0);
    bench_dither(1, 8192, 50);
    bench_run_ms(50);
    struct swing swing = watch_swing(1, 100);
    CHECK_EQUAL(0, swing.lowest);
    CHECK_EQUAL(9216, swing.highest);
    bench_drive(1, DUTY_FULL, 0);
    bench_run_alive_ms(600);
    swing = watch_swing(1, 100);
    CHECK_EQUAL(DUTY_FULL - 8192, swing.lowest);
    CHECK_EQUAL(DUTY_FULL, swing.highest);
}

static void dither_alone_drives_nothing(void) {
    armed();
    bench_dither(0, 8192, 250);
    const struct swing swing = watch_swing(0, 100);
    CHECK_EQUAL(0, swing.highest);
    bench_drive(0, 2000, 0);
    bench_run_ms(50);
    bench_drive(0, 0, 0);
    bench_run_ms(50);
    CHECK_EQUAL(0, watch_swing(0, 100).highest);
}

static void dither_ends_with_amplitude_zero_and_with_the_safe_state(void) {
    armed();
    bench_drive(0, 20480, 0);
    bench_run_ms(200);
    bench_dither(0, 2048, 100);
    CHECK(watch_swing(0, 50).turns >= 9);
    bench_dither(0, 0, 100);
    CHECK_EQUAL(0, watch_swing(0, 50).turns);
    CHECK_EQUAL(20480, hardware.duty[0]);
    bench_dither(0, 2048, 100);
    bench_make_safe();
    bench_check_safe();
    CHECK_EQUAL(0, watch_swing(0, 50).highest);
    bench_rest();
    bench_arm();
    bench_drive(0, 20480, 0);
    bench_run_ms(200);
    CHECK_EQUAL(0, watch_swing(0, 50).turns);
}

static void the_same_dither_again_does_not_disturb_its_wave(void) {
    armed();
    bench_drive(0, 20480, 0);
    bench_run_ms(200);
    bench_dither(0, 2048, 50);
    bench_run_ms(3);
    const uint32_t turned = board.drives[0].turned;
    bench_dither(0, 2048, 50);
    CHECK_EQUAL(turned, board.drives[0].turned);
}

void drive_tests(void) {
    RUN(the_ramp_of_the_board_takes_half_a_second_for_the_full_swing);
    RUN(a_slower_ramp_is_kept_and_a_faster_one_is_not);
    RUN(no_millisecond_changes_more_than_the_limit);
    RUN(a_long_stall_is_not_made_up_for_by_a_jump);
    RUN(a_ramp_takes_its_time_however_seldom_the_board_is_polled);
    RUN(the_time_before_a_set_point_came_moves_nothing);
    RUN(the_acknowledge_comes_before_the_ramp_is_through);
    RUN(both_drives_ramp_on_their_own);
    RUN(the_same_set_point_twice_equals_once);
    RUN(dither_swings_about_the_duty_at_its_frequency);
    RUN(dither_is_held_within_zero_and_fully_on);
    RUN(dither_alone_drives_nothing);
    RUN(dither_ends_with_amplitude_zero_and_with_the_safe_state);
    RUN(the_same_dither_again_does_not_disturb_its_wave);
}
