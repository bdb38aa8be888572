/* Samples: windows, what they hold, and what the line cannot carry. */
#include "bench.h"
#include "bytes.h"
#include "check.h"
#include "suites.h"

/* Offsets in the payload of a sample. */
enum {
    TIME_AT = 0,
    COUNT_0_AT = 4,
    EDGE_0_AT = 8,
    COUNT_1_AT = 12,
    MEAN_0_AT = 20,
    MIN_0_AT = 22,
    MAX_0_AT = 24,
    CONVERSIONS_AT = 44,
    APPLIED_0_AT = 46,
    STATE_AT = 54,
    INPUTS_AT = 55,
    EVENTS_AT = 56
};

static const uint8_t *last_sample(void) {
    static const uint8_t none[58];
    const struct heard *const sample = bench_last(MESSAGE_SAMPLE);
    if (!CHECK(sample != NULL)) {
        return none;
    }
    CHECK_EQUAL(58, sample->length);
    return sample->payload;
}

static void no_samples_come_before_they_are_asked_for(void) {
    bench_start();
    bench_forget();
    bench_run_ms(1000);
    CHECK_EQUAL(0, bench_count(MESSAGE_SAMPLE));
}

static void samples_come_at_the_period_and_stop_at_zero(void) {
    bench_start();
    bench_check_acknowledged(bench_stream(20), MESSAGE_STREAM);
    bench_forget();
    bench_run_ms(1000);
    const unsigned count = bench_count(MESSAGE_SAMPLE);
    CHECK(count >= 49 && count <= 51);
    bench_check_acknowledged(bench_stream(0), MESSAGE_STREAM);
    bench_run_ms(20);
    bench_forget();
    bench_run_ms(1000);
    CHECK_EQUAL(0, heard_count);
}

static void windows_do_not_drift(void) {
    bench_start();
    bench_stream(10);
    bench_run_ms(30);
    bench_forget();
    bench_run_ms(1000);
    const uint32_t first = get_u32(heard[0].payload + TIME_AT);
    const uint32_t last = get_u32(last_sample() + TIME_AT);
    const uint32_t expected = (bench_count(MESSAGE_SAMPLE) - 1u) * 10u * TICKS_PER_MS;
    CHECK_EQUAL(expected, last - first);
}

static void missed_windows_are_not_made_up_for_by_a_burst(void) {
    bench_start();
    bench_stream(10);
    bench_run_ms(25);
    hardware.ticks += 55u * TICKS_PER_MS;
    bench_forget();
    bench_run_ms(5);
    CHECK_EQUAL(1, bench_count(MESSAGE_SAMPLE));
    bench_run_ms(30);
    CHECK_EQUAL(4, bench_count(MESSAGE_SAMPLE));
}

static void the_same_period_again_does_not_disturb_the_window(void) {
    bench_start();
    bench_stream(100);
    bench_forget();
    for (unsigned i = 0; i < 10; i++) {
        bench_run_ms(50);
        bench_stream(100);
    }
    bench_run_ms(10);
    CHECK_EQUAL(5, bench_count(MESSAGE_SAMPLE));
}

static void a_sample_holds_what_the_hardware_says(void) {
    bench_start();
    hardware.meters[0].count = 123456;
    hardware.meters[0].last_edge = 1000;
    hardware.meters[1].count = 0xFFFFFFFF;
    hardware.analogs[0] = 45216;
    bench_arm();
    bench_drive(0, 300, 0);
    bench_stream(20);
    bench_run_ms(30);
    const uint8_t *const sample = last_sample();
    CHECK_EQUAL(123456, get_u32(sample + COUNT_0_AT));
    CHECK_EQUAL(1000, get_u32(sample + EDGE_0_AT));
    CHECK_EQUAL(0xFFFFFFFF, get_u32(sample + COUNT_1_AT));
    CHECK_EQUAL(45216, get_u16(sample + MEAN_0_AT));
    CHECK_EQUAL(40, get_u16(sample + CONVERSIONS_AT));
    CHECK_EQUAL(256, get_u32(sample + APPLIED_0_AT));
    CHECK_EQUAL(STATE_ARMED, sample[STATE_AT]);
    CHECK_EQUAL(ALL_CLOSED, sample[INPUTS_AT]);
    CHECK_EQUAL(2, get_u16(sample + EVENTS_AT));
    hardware.inputs = INPUT_GUARD;
    bench_run_ms(45);
    CHECK_EQUAL(INPUT_GUARD, last_sample()[INPUTS_AT]);
    CHECK_EQUAL(STATE_SAFE, last_sample()[STATE_AT]);
}

static void a_window_gives_mean_lowest_and_highest_of_its_own_readings(void) {
    bench_start();
    bench_stream(100);
    bench_run_ms(20);
    hardware.analogs[0] = 1000;
    bench_run_ms(20);
    hardware.analogs[0] = 4000;
    bench_run_ms(65);
    const uint8_t *sample = last_sample();
    const uint16_t mean = get_u16(sample + MEAN_0_AT);
    CHECK_EQUAL(0, get_u16(sample + MIN_0_AT));
    CHECK_EQUAL(4000, get_u16(sample + MAX_0_AT));
    CHECK(mean > 2500 && mean < 2700);
    bench_run_ms(100);
    sample = last_sample();
    CHECK_EQUAL(4000, get_u16(sample + MIN_0_AT));
    CHECK_EQUAL(4000, get_u16(sample + MEAN_0_AT));
}

static void a_window_without_a_reading_repeats_the_one_before(void) {
    bench_start();
    bench_stream(10);
    hardware.analogs[0] = 777;
    bench_run_ms(50);
    hardware.conversions_per_ms = 0;
    hardware.analogs[0] = 9999;
    bench_run_ms(50);
    CHECK_EQUAL(0, get_u16(last_sample() + CONVERSIONS_AT));
    CHECK_EQUAL(777, get_u16(last_sample() + MEAN_0_AT));
    CHECK_EQUAL(777, get_u16(last_sample() + MIN_0_AT));
    CHECK_EQUAL(777, get_u16(last_sample() + MAX_0_AT));
}

static void the_slowest_window_at_full_scale_does_not_overflow(void) {
    bench_start();
    hardware.conversions_per_ms = 60;
    hardware.analogs[0] = 65535;
    bench_stream(1000);
    bench_run_ms(2010);
    CHECK_EQUAL(60000, get_u16(last_sample() + CONVERSIONS_AT));
    CHECK_EQUAL(65535, get_u16(last_sample() + MEAN_0_AT));
}

static void samples_that_find_no_room_show_as_a_gap_in_the_sequence(void) {
    bench_start();
    bench_stream(20);
    bench_run_ms(100);
    hardware.line_blocked = true;
    bench_run_ms(1000);
    hardware.line_blocked = false;
    bench_forget();
    bench_run_ms(100);
    unsigned lost = 0;
    for (unsigned i = 1; i < heard_count; i++) {
        lost += (uint16_t)(heard[i].sequence - heard[i - 1].sequence) - 1u;
    }
    CHECK(lost >= 45 && lost <= 50);
    CHECK_EQUAL(0, heard_bad);
}

static void a_period_of_two_milliseconds_fills_the_line_without_a_broken_frame(void) {
    bench_start();
    bench_stream(2);
    bench_forget();
    bench_run_ms(1000);
    CHECK_EQUAL(0, heard_bad);
    /* 66 bytes a sample at 25 bytes a millisecond: the line carries 378 a second. */
    CHECK(bench_count(MESSAGE_SAMPLE) > 300);
    const uint16_t span = (uint16_t)(heard[heard_count - 1].sequence - heard[0].sequence);
    CHECK(span >= 490 && span <= 505);
}

static void samples_go_on_over_a_roll_over_of_board_time(void) {
    bench_start_at(0u - 100u * TICKS_PER_MS);
    bench_stream(10);
    bench_run_ms(5);
    bench_forget();
    bench_run_ms(200);
    CHECK(bench_count(MESSAGE_SAMPLE) >= 19);
    CHECK_EQUAL(heard_count, bench_count(MESSAGE_SAMPLE));
    for (unsigned i = 1; i < heard_count; i++) {
        const uint32_t step = get_u32(heard[i].payload + TIME_AT) - get_u32(heard[i - 1].payload + TIME_AT);
        CHECK_EQUAL(10u * TICKS_PER_MS, step);
    }
}

static void short_samples_are_the_same_in_less(void) {
    bench_start();
    hardware.meters[0].count = 0x12345678;
    hardware.meters[0].last_edge = 1000;
    hardware.meters[1].count = 0xFFFFFFFF;
    hardware.analogs[0] = 45216;
    hardware.analogs[3] = 77;
    bench_arm();
    bench_drive(0, DUTY_FULL, 0);
    bench_drive(1, 300, 0);
    bench_check_acknowledged(bench_short_stream(20), MESSAGE_STREAM);
    bench_run_alive_ms(600);
    const struct heard *const sample = bench_last(MESSAGE_SHORT_SAMPLE);
    CHECK_EQUAL(0, bench_count(MESSAGE_SAMPLE));
    if (CHECK(sample != NULL)) {
        const uint8_t *const at = sample->payload;
        CHECK_EQUAL(30, sample->length);
        CHECK(hardware.ticks - get_u32(at) < 25u * TICKS_PER_MS);
        CHECK_EQUAL(0x5678, get_u16(at + 4));
        CHECK_EQUAL(1000, get_u32(at + 6));
        CHECK_EQUAL(0xFFFF, get_u16(at + 10));
        CHECK_EQUAL(0, get_u32(at + 12));
        CHECK_EQUAL(45216, get_u16(at + 16));
        CHECK_EQUAL(77, get_u16(at + 22));
        CHECK_EQUAL(65535, get_u16(at + 24));
        CHECK_EQUAL(256, get_u16(at + 26));
        CHECK_EQUAL(STATE_ARMED, at[28]);
        CHECK_EQUAL(ALL_CLOSED, at[29]);
    }
    bench_stream(20);
    bench_run_ms(50);
    CHECK(bench_count(MESSAGE_SAMPLE) >= 2);
}

static void five_hundred_short_samples_a_second_fit_the_line_without_a_gap(void) {
    bench_start();
    bench_short_stream(2);
    bench_run_ms(10);
    bench_forget();
    bench_run_ms(5000);
    CHECK(heard_count >= 2499 && heard_count <= 2501);
    CHECK_EQUAL(heard_count, bench_count(MESSAGE_SHORT_SAMPLE));
    for (unsigned i = 1; i < heard_count; i++) {
        CHECK_EQUAL(1, (uint16_t)(heard[i].sequence - heard[i - 1].sequence));
    }
}

static void whole_samples_every_three_milliseconds_fit_the_line_without_a_gap(void) {
    bench_start();
    bench_stream(3);
    bench_run_ms(10);
    bench_forget();
    bench_run_ms(3000);
    CHECK(heard_count >= 999 && heard_count <= 1001);
    CHECK_EQUAL(heard_count, bench_count(MESSAGE_SAMPLE));
    for (unsigned i = 1; i < heard_count; i++) {
        CHECK_EQUAL(1, (uint16_t)(heard[i].sequence - heard[i - 1].sequence));
    }
}

static void two_pulse_windows_cost_one_sample_of_a_full_line(void) {
    bench_start();
    bench_windows(100);
    bench_stream(3);
    bench_run_ms(10);
    bench_forget();
    bench_run_ms(3000);
    CHECK(bench_count(MESSAGE_SAMPLE) >= 968);
    CHECK(bench_count(MESSAGE_PULSE_WINDOW) >= 58);
    CHECK_EQUAL(0, heard_bad);
}

static void a_period_of_one_millisecond_is_taken_and_drops_what_the_line_cannot_carry(void) {
    bench_start();
    bench_check_acknowledged(bench_short_stream(1), MESSAGE_STREAM);
    bench_forget();
    bench_run_ms(1000);
    /* 38 bytes each at 25 bytes a millisecond. */
    CHECK(heard_count > 600 && heard_count <= 660);
    const uint16_t span = (uint16_t)(heard[heard_count - 1].sequence - heard[0].sequence);
    CHECK(span >= 985 && span <= 1005);
    CHECK_EQUAL(0, heard_bad);
}

static void a_missing_meter_says_the_start_value(void) {
    bench_start();
    description.meters = 1;
    hardware.meters[1].count = 5;
    hardware.meters[1].last_edge = 6;
    bench_stream(10);
    bench_run_ms(15);
    CHECK_EQUAL(EDGES_AT_START, get_u32(last_sample() + COUNT_1_AT));
    CHECK_EQUAL(0, get_u32(last_sample() + COUNT_1_AT + 4));
}

static void board_time_begins_where_it_rolls_over_within_seconds(void) {
    bench_start();
    bench_stream(100);
    bench_run_alive_ms(150);
    CHECK(get_u32(last_sample()) >= TICKS_AT_START);
    bench_run_ms(4200);
    CHECK(get_u32(last_sample()) < TICKS_PER_MS * 1000u);
}

void stream_tests(void) {
    RUN(no_samples_come_before_they_are_asked_for);
    RUN(samples_come_at_the_period_and_stop_at_zero);
    RUN(windows_do_not_drift);
    RUN(missed_windows_are_not_made_up_for_by_a_burst);
    RUN(the_same_period_again_does_not_disturb_the_window);
    RUN(a_sample_holds_what_the_hardware_says);
    RUN(a_window_gives_mean_lowest_and_highest_of_its_own_readings);
    RUN(a_window_without_a_reading_repeats_the_one_before);
    RUN(the_slowest_window_at_full_scale_does_not_overflow);
    RUN(samples_that_find_no_room_show_as_a_gap_in_the_sequence);
    RUN(a_period_of_two_milliseconds_fills_the_line_without_a_broken_frame);
    RUN(samples_go_on_over_a_roll_over_of_board_time);
    RUN(short_samples_are_the_same_in_less);
    RUN(five_hundred_short_samples_a_second_fit_the_line_without_a_gap);
    RUN(whole_samples_every_three_milliseconds_fit_the_line_without_a_gap);
    RUN(two_pulse_windows_cost_one_sample_of_a_full_line);
    RUN(a_period_of_one_millisecond_is_taken_and_drops_what_the_line_cannot_carry);
    RUN(a_missing_meter_says_the_start_value);
    RUN(board_time_begins_where_it_rolls_over_within_seconds);
}
