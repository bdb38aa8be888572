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
    bench_stream(2);
    hardware.line_blocked = true;
    bench_run_ms(100);
    for (unsigned i = 0; i < 20; i++) {
        bench_arm();
        bench_run_ms(5);
        hardware.inputs = 0;
        bench_run_ms(5);
        bench_check_safe();
        hardware.inputs = INPUTS_WATCHED;
        bench_rest();
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
        bench_rest();
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
        bench_rest();
    }
    bench_run_ms(100);
    check_events_without_a_gap(1000);
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
        bench_rest();
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
    uint8_t wire[32];
    const struct frame frame = {PROTOCOL_VERSION, MESSAGE_MAKE_SAFE, 5, 0, NULL};
    const size_t length = frame_encode(&frame, wire, sizeof wire).length;

    bench_start();
    bench_arm();
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
    bench_stream(2);
    hardware.line_blocked = true;
    bench_run_alive_ms(600);
    CHECK_EQUAL(DUTY_FULL, hardware.duty[0]);
    hardware.inputs = INPUT_GUARD;
    bench_run_ms(3);
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

/* Eleven events and more: started, then five times armed and made safe. */
static void eleven_events(void) {
    bench_start();
    for (unsigned i = 0; i < 5; i++) {
        bench_arm();
        bench_make_safe();
        bench_rest();
    }
    CHECK_EQUAL(11, board.events.newest);
    bench_forget();
}

static void check_repeated(uint16_t first, unsigned count, uint16_t sequence) {
    bench_run_ms(20);
    CHECK_EQUAL(count, bench_count(MESSAGE_EVENT));
    CHECK_EQUAL(count + 1u, heard_count);
    for (unsigned i = 0; i < count; i++) {
        CHECK_EQUAL((uint16_t)(first + i), get_u16(heard[i].payload));
    }
    CHECK_EQUAL(MESSAGE_ACKNOWLEDGE, heard[heard_count - 1].type);
    bench_check_acknowledged(sequence, MESSAGE_EVENTS_FROM);
    bench_forget();
}

static void the_last_eight_events_are_sent_again_and_then_acknowledged(void) {
    eleven_events();
    check_repeated(9, 3, bench_events_from(9));
    check_repeated(11, 1, bench_events_from(11));
    check_repeated(4, 8, bench_events_from(4));
    check_repeated(4, 8, bench_events_from(1));
    check_repeated(4, 8, bench_events_from(0));
    check_repeated(4, 8, bench_events_from(65535));
}

static void events_that_are_not_there_yet_are_only_acknowledged(void) {
    eleven_events();
    check_repeated(0, 0, bench_events_from(12));
    check_repeated(0, 0, bench_events_from(20000));
}

static void an_event_sent_again_is_the_one_it_was(void) {
    bench_start();
    bench_arm();
    bench_run_ms(5);
    const struct heard first = *bench_last(MESSAGE_EVENT);
    bench_run_alive_ms(1000);
    bench_forget();
    bench_events_from(2);
    bench_run_ms(5);
    const struct heard *const again = bench_last(MESSAGE_EVENT);
    if (CHECK(again != NULL)) {
        CHECK_BYTES(first.payload, first.length, again->payload, again->length);
    }
}

static void numbers_go_on_over_their_roll_over(void) {
    bench_start();
    board.events.newest = 65533;
    board.events.sent = 65533;
    board.events.next = 65534;
    board.events.held = 0;
    for (unsigned i = 0; i < 5; i++) {
        bench_arm();
        bench_make_safe();
        bench_rest();
    }
    CHECK_EQUAL(7, board.events.newest);
    bench_forget();
    check_repeated(0, 8, bench_events_from(65535));
    check_repeated(0, 8, bench_events_from(0));
    check_repeated(2, 6, bench_events_from(2));
}

static void asking_for_old_events_skips_none_that_waits_for_the_line(void) {
    bench_start();
    bench_stream(2);
    hardware.line_blocked = true;
    bench_run_ms(50);
    bench_arm();
    bench_make_safe();
    CHECK_EQUAL(3, board.events.newest);
    bench_forget();
    bench_events_from(3);
    hardware.line_blocked = false;
    bench_run_ms(50);
    unsigned seen = 0;
    for (unsigned i = 0; i < heard_count; i++) {
        if (heard[i].type == MESSAGE_EVENT) {
            seen |= 1u << get_u16(heard[i].payload);
        }
    }
    CHECK((seen & 0xCu) == 0xCu || board.events.sent == 3);
    CHECK_EQUAL(3, get_u16(bench_last(MESSAGE_EVENT)->payload));
}

static void asking_for_events_all_the_time_hides_no_new_one(void) {
    bench_start();
    for (unsigned i = 0; i < 30; i++) {
        hardware.line_blocked = i % 4 != 0;
        bench_events_from(1);
        bench_arm();
        bench_events_from(1);
        bench_make_safe();
        bench_rest();
    }
    hardware.line_blocked = false;
    bench_run_ms(100);
    CHECK_EQUAL(board.events.newest, board.events.sent);
    uint16_t highest = 0;
    for (unsigned i = 0; i < heard_count; i++) {
        if (heard[i].type == MESSAGE_EVENT) {
            const uint16_t number = get_u16(heard[i].payload);
            CHECK(number <= highest + 1u);
            highest = number > highest ? number : highest;
        }
    }
    CHECK_EQUAL(board.events.newest, highest);
    CHECK(highest > 15);
}

void event_tests(void) {
    RUN(events_are_numbered_from_one_and_carry_their_time);
    RUN(no_event_is_lost_while_the_transmit_ring_is_full);
    RUN(a_board_that_cannot_report_more_events_is_not_armed_but_always_made_safe);
    RUN(a_flood_of_arm_and_make_safe_loses_no_event);
    RUN(a_sample_never_counts_an_event_that_has_not_been_sent);
    RUN(an_event_of_the_same_moment_comes_before_the_sample_that_counts_it);
    RUN(making_safe_does_not_wait_for_a_blocked_line);
    RUN(the_last_eight_events_are_sent_again_and_then_acknowledged);
    RUN(events_that_are_not_there_yet_are_only_acknowledged);
    RUN(an_event_sent_again_is_the_one_it_was);
    RUN(numbers_go_on_over_their_roll_over);
    RUN(asking_for_old_events_skips_none_that_waits_for_the_line);
    RUN(asking_for_events_all_the_time_hides_no_new_one);
    RUN(sequence_numbers_go_on_by_one_and_roll_over);
}
