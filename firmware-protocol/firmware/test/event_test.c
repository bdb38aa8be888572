/* Events: numbered, timed, and never lost to a busy line. */
#include "bench.h"
#include "bytes.h"
#include "check.h"
#include "suites.h"

static void check_events_without_a_gap(unsigned at_least) {
    uint16_t expected = 1;
    for (unsigned i = 0; i < heard_count; i++) {
        if (heard[i].type == MESSAGE_EVENT) {
            CHECK_EQUAL(expected, get_u16(heard[i].payload));
            expected++;
        }
    }
    CHECK(expected > at_least);
}

static void events_are_numbered_from_one_and_carry_their_time(void) {
    bench_start();
    bench_arm();
    bench_run_ms(100);
    const uint32_t before = hardware.ticks;
    bench_make_safe();
    bench_run_ms(3);
    check_events_without_a_gap(3);
    const uint32_t time = get_u32(bench_last(MESSAGE_EVENT)->payload + 2);
    CHECK(time - before <= TICKS_PER_MS);
}

static void no_event_is_lost_while_the_transmit_ring_is_full(void) {
    bench_start();
    bench_stream(STREAM_PERIOD_MIN_MS);
    hardware.line_blocked = true;
    bench_run_ms(100);
    for (unsigned i = 0; i < 20; i++) {
        bench_arm();
        bench_run_ms(5);
        hardware.inputs = 0;
        bench_run_ms(5);
        bench_check_safe();
        hardware.inputs = INPUTS_CLOSED;
    }
    hardware.line_blocked = false;
    bench_run_ms(200);
    check_events_without_a_gap(5);
    CHECK_EQUAL(board.events.newest, get_u16(bench_last(MESSAGE_EVENT)->payload));
    CHECK_EQUAL(0, heard_bad);
}

static void a_board_that_cannot_report_more_events_is_not_armed_but_always_made_safe(void) {
    bench_start();
    hardware.line_blocked = true;
    for (unsigned i = 0; i < 40; i++) {
        bench_arm();
        bench_make_safe();
        bench_check_safe();
    }
    bench_arm();
    CHECK_EQUAL(STATE_SAFE, board.state);
    hardware.line_blocked = false;
    bench_run_ms(100);
    bench_check_acknowledged(bench_arm(), MESSAGE_ARM);
    CHECK_EQUAL(STATE_ARMED, board.state);
    bench_run_ms(5);
    check_events_without_a_gap(4);
}

static void a_flood_of_arm_and_make_safe_loses_no_event(void) {
    bench_start();
    for (unsigned i = 0; i < 500; i++) {
        bench_arm();
        bench_make_safe();
    }
    bench_run_ms(100);
    check_events_without_a_gap(200);
    CHECK_EQUAL(board.events.newest, get_u16(bench_last(MESSAGE_EVENT)->payload));
}

static void a_sample_never_counts_an_event_that_has_not_been_sent(void) {
    uint16_t newest = 0;
    unsigned samples = 0;
    bench_start();
    bench_stream(5);
    bench_forget();
    newest = 1;
    for (unsigned i = 0; i < 100; i++) {
        hardware.line_blocked = i % 3 == 0;
        bench_arm();
        bench_run_ms(9);
        bench_make_safe();
        bench_run_ms(9);
    }
    hardware.line_blocked = false;
    bench_run_ms(50);
    for (unsigned i = 0; i < heard_count; i++) {
        if (heard[i].type == MESSAGE_EVENT) {
            newest = get_u16(heard[i].payload);
        } else if (heard[i].type == MESSAGE_SAMPLE) {
            samples++;
            CHECK(get_u16(heard[i].payload + 56) <= newest);
        }
    }
    CHECK(samples > 100);
}

static void an_event_of_the_same_moment_comes_before_the_sample_that_counts_it(void) {
    uint8_t payload[4];
    uint8_t wire[32];
    put_u32(payload, BOOT_ID);
    const struct frame frame = {PROTOCOL_VERSION, MESSAGE_ARM, 5, sizeof payload, payload};
    const size_t length = frame_encode(&frame, wire, sizeof wire).length;

    bench_start();
    bench_stream(50);
    bench_run_ms(20);
    bench_forget();
    bench_send_bytes(wire, (uint32_t)length);
    hardware.ticks = board.stream.window_began + 50u * TICKS_PER_MS;
    board_poll(&board);
    bench_run_ms(10);
    CHECK_EQUAL(3, heard_count);
    CHECK_EQUAL(MESSAGE_EVENT, heard[1].type);
    CHECK_EQUAL(MESSAGE_SAMPLE, heard[2].type);
    CHECK_EQUAL(get_u16(heard[1].payload), get_u16(heard[2].payload + 56));
}

static void making_safe_does_not_wait_for_a_blocked_line(void) {
    bench_start();
    bench_arm();
    bench_drive(0, DUTY_FULL, 0);
    bench_stream(STREAM_PERIOD_MIN_MS);
    hardware.line_blocked = true;
    bench_run_alive_ms(600);
    CHECK_EQUAL(DUTY_FULL, hardware.duty[0]);
    hardware.inputs = INPUT_GUARD;
    board_poll(&board);
    bench_check_safe();
}

static void sequence_numbers_go_on_by_one_and_roll_over(void) {
    bench_start();
    board.next_sequence = 0xFFF0;
    bench_forget();
    for (unsigned i = 0; i < 32; i++) {
        bench_make_safe();
        bench_run_ms(2);
    }
    CHECK_EQUAL(32, heard_count);
    for (unsigned i = 0; i < heard_count; i++) {
        CHECK_EQUAL((uint16_t)(0xFFF0u + i), heard[i].sequence);
    }
}

void event_tests(void) {
    RUN(events_are_numbered_from_one_and_carry_their_time);
    RUN(no_event_is_lost_while_the_transmit_ring_is_full);
    RUN(a_board_that_cannot_report_more_events_is_not_armed_but_always_made_safe);
    RUN(a_flood_of_arm_and_make_safe_loses_no_event);
    RUN(a_sample_never_counts_an_event_that_has_not_been_sent);
    RUN(an_event_of_the_same_moment_comes_before_the_sample_that_counts_it);
    RUN(making_safe_does_not_wait_for_a_blocked_line);
    RUN(sequence_numbers_go_on_by_one_and_roll_over);
}
