/* Both meters: every edge counted, and timed on the board's clock. */
#include <stddef.h>

#include "bytes.h"
#include "check.h"
#include "elf_suites.h"
#include "emulated_line.h"

#define SAMPLE_METERS_AT 4u
/* Board time ticks twice a microsecond. */
#define TICKS_PER_US 2.0
/* The hardware notes the first meter's edges to the tick; the second one's wait for the other interrupts. */
static const double spread_us[METERS_MAX] = {1.0, 25.0};

struct spread {
    double least;
    double most;
};

static double board_us(uint32_t ticks) {
    return (ticks - (uint32_t)TICKS_AT_START) / TICKS_PER_US;
}

/* How far the board's time of the last edge is ahead of the plant's: the same for each edge, but for the spread. */
static void take_offset(unsigned meter, const uint8_t *at, struct spread *spread) {
    const double offset = board_us(get_u32(at + 4)) - given[meter].last_us;
    spread->least = offset < spread->least ? offset : spread->least;
    spread->most = offset > spread->most ? offset : spread->most;
}

static void set_meters(const double every_us[METERS_MAX]) {
    for (unsigned i = 0; i < METERS_MAX; i++) {
        plant.edge_every_us[i] = every_us[i];
    }
}

/* Runs in stretches with a pause between them, so that count and last edge stand still for a sample. */
static void check_edges(const double every_us[METERS_MAX], unsigned ms) {
    static const double no_edges[METERS_MAX] = {0.0, 0.0};
    struct spread spread[METERS_MAX] = {{1e18, -1e18}, {1e18, -1e18}};

    for (unsigned done = 0; done < ms; done += 50) {
        set_meters(every_us);
        emulated_run_ms(30);
        set_meters(no_edges);
        emulated_run_ms(20);
        host_forget();
        const struct board_frame *const sample = host_wait(MESSAGE_SAMPLE, 100);
        if (!CHECK(sample != NULL)) {
            return;
        }
        for (unsigned i = 0; i < METERS_MAX; i++) {
            const uint8_t *const at = sample->payload + SAMPLE_METERS_AT + 8u * i;
            CHECK_EQUAL((uint32_t)(EDGES_AT_START + given[i].edges), get_u32(at));
            if (given[i].edges > 0) {
                take_offset(i, at, &spread[i]);
            }
        }
    }
    for (unsigned i = 0; i < METERS_MAX; i++) {
        CHECK(given[i].edges == 0 || spread[i].most - spread[i].least <= spread_us[i]);
    }
}

static void every_edge_of_both_meters_is_counted_and_timed(void) {
    static const double every_us[METERS_MAX] = {1234.567, 987.654};
    if (!start()) {
        return;
    }
    CHECK(host_stream(10, STREAM_SAMPLES));
    check_edges(every_us, 3000);
    CHECK(given[0].edges > 1000 && given[1].edges > 1000);
    quit();
}

static void ten_thousand_edges_a_second_are_all_counted_beside_full_traffic(void) {
    static const double first[METERS_MAX] = {100.0, 0.0};
    static const double second[METERS_MAX] = {0.0, 100.0};
    static const double both[METERS_MAX] = {100.0, 103.7};
    if (!start()) {
        return;
    }
    CHECK(host_stream(3, STREAM_SAMPLES));
    check_edges(first, 500);
    check_edges(second, 500);
    check_edges(both, 1000);
    CHECK(given[0].edges > 5000 && given[1].edges > 5000);
    quit();
}

/* One edge at this virtual time; how far the board's time of it is ahead. */
static double offset_of_edge(unsigned meter, double us) {
    emulated_edge_at(meter, us);
    while ((double)pins.us < us) {
        emulated_step();
    }
    emulated_run_ms(10);
    host_forget();
    const struct board_frame *const sample = host_wait(MESSAGE_SAMPLE, 100);
    if (!CHECK(sample != NULL)) {
        return 0.0;
    }
    const uint8_t *const at = sample->payload + SAMPLE_METERS_AT + 8u * meter;
    CHECK_EQUAL((uint32_t)(EDGES_AT_START + given[meter].edges), get_u32(at));
    return board_us(get_u32(at + 4)) - us;
}

/* The timer has 16 bits: an edge that comes while it turns over could be 33 ms wrong. */
static void edges_around_a_turn_of_the_timer_belong_to_the_right_side_of_it(void) {
    static const double turn_us = 65536.0 / TICKS_PER_US;
    if (!start()) {
        return;
    }
    CHECK(host_stream(5, STREAM_SAMPLES));
    for (unsigned meter = 0; meter < METERS_MAX; meter++) {
        const double ahead = offset_of_edge(meter, (double)pins.us + 1000.0);
        unsigned wrong = 0;
        for (double off = -8.0; off < 12.0; off += 0.5) {
            const double turns = (double)(uint64_t)(((double)pins.us + ahead + 1000.0) / turn_us) + 1.0;
            const double error = offset_of_edge(meter, turns * turn_us - ahead + off) - ahead;
            wrong += error < -spread_us[meter] || error > spread_us[meter];
        }
        CHECK_EQUAL(0, wrong);
    }
    quit();
}

static void no_meter_hears_the_other(void) {
    static const double second[METERS_MAX] = {0.0, 500.0};
    if (!start()) {
        return;
    }
    CHECK(host_stream(10, STREAM_SAMPLES));
    check_edges(second, 500);
    CHECK_EQUAL(0, given[0].edges);
    CHECK(given[1].edges > 500);
    quit();
}

struct rolling {
    bool seen;
    uint32_t time;
    uint32_t counts[METERS_MAX];
    unsigned time_rolled;
    unsigned counts_rolled[METERS_MAX];
    unsigned faults;
};

static void take_rolling(struct rolling *rolling, const uint8_t *payload) {
    const uint32_t time = get_u32(payload);
    const int32_t step = (int32_t)(time - rolling->time - 20000u);
    rolling->faults += rolling->seen && (step < -1000 || step > 1000);
    rolling->time_rolled += rolling->seen && time < rolling->time;
    rolling->time = time;
    for (unsigned i = 0; i < METERS_MAX; i++) {
        const uint32_t count = get_u32(payload + SAMPLE_METERS_AT + 8u * i);
        const uint32_t last = get_u32(payload + SAMPLE_METERS_AT + 8u * i + 4u);
        const bool moved = count != (uint32_t)EDGES_AT_START;
        rolling->faults += rolling->seen && count - rolling->counts[i] > 20u;
        rolling->faults += !moved && last != 0;
        /* With an edge every 2 or 3 ms the last one is young. */
        rolling->faults += moved && time - last > 7000u;
        rolling->counts_rolled[i] += rolling->seen && count < rolling->counts[i];
        rolling->counts[i] = count;
    }
    rolling->seen = true;
}

static void time_and_counts_roll_over_within_the_first_ten_seconds(void) {
    struct rolling rolling = {0};
    if (!start()) {
        return;
    }
    CHECK(host_stream(10, STREAM_SAMPLES));
    const struct board_frame *sample = host_wait(MESSAGE_SAMPLE, 100);
    CHECK(sample != NULL && get_u32(sample->payload) - (uint32_t)TICKS_AT_START < 2000000u);
    plant.edge_every_us[0] = 2000.0;
    plant.edge_every_us[1] = 3000.0;
    while (pins.us < 10000000u) {
        emulated_step();
        while ((sample = host_next(MESSAGE_SAMPLE)) != NULL) {
            take_rolling(&rolling, sample->payload);
        }
    }
    CHECK_EQUAL(0, rolling.faults);
    CHECK_EQUAL(1, rolling.time_rolled);
    CHECK_EQUAL(1, rolling.counts_rolled[0]);
    CHECK_EQUAL(1, rolling.counts_rolled[1]);
    CHECK(rolling.time < 20000000u);
    quit();
}

/* Checks one window of a meter whose intervals are all alike. */
static void check_window(const uint8_t *payload, double every_us) {
    const unsigned meter = payload[0];
    const double ticks = every_us * TICKS_PER_US;
    const double late = 2.0 * spread_us[meter] * TICKS_PER_US;
    const double length = get_u32(payload + 5) - get_u32(payload + 1);
    const uint16_t intervals = get_u16(payload + 19);
    const double mean = (double)get_u32(payload + 21) / intervals;

    CHECK(length >= 999000.0 && length <= 1001000.0);
    CHECK_EQUAL(get_u16(payload + 9), intervals);
    CHECK(intervals + 1.0 >= length / ticks && intervals - 1.0 <= length / ticks);
    CHECK(mean >= ticks - 1.0 && mean <= ticks + 1.0);
    CHECK(get_u32(payload + 41) >= ticks - late);
    CHECK(get_u32(payload + 45) <= ticks + late);
    CHECK_EQUAL(0, get_u16(payload + 49));
    CHECK_EQUAL(0, get_u16(payload + 51));
}

static void pulse_windows_hold_every_interval_of_both_meters_beside_samples(void) {
    static const double every_us[METERS_MAX] = {400.0, 700.0};
    uint8_t payload[2];
    unsigned windows[METERS_MAX] = {0};
    if (!start()) {
        return;
    }
    put_u16(payload, 500);
    set_meters(every_us);
    CHECK(host_stream(10, STREAM_SAMPLES));
    emulated_run_ms(100);
    CHECK(host_acknowledged(MESSAGE_WINDOWS, payload, sizeof payload));
    emulated_run_ms(10);
    for (unsigned i = 0; i < 10; i++) {
        const struct board_frame *const window = host_wait(MESSAGE_PULSE_WINDOW, 1000);
        if (!CHECK(window != NULL)) {
            break;
        }
        const unsigned meter = window->payload[0];
        if (windows[meter]++ > 0) {
            check_window(window->payload, every_us[meter]);
        }
    }
    CHECK_EQUAL(5, windows[0]);
    CHECK_EQUAL(5, windows[1]);
    quit();
}

/* Drives from nothing to full beside everything else; the virtual milliseconds until the pin is there. */
static unsigned ms_of_full_ramp(void) {
    CHECK(host_drive(0, DUTY_FULL));
    while (pins.duty[0] == 0) {
        emulated_step();
    }
    const unsigned long long began = pins.us;
    while (pins.duty[0] < DUTY_FULL && pins.us - began < 2000000u) {
        emulated_step();
    }
    return (unsigned)((pins.us - began) / 1000u);
}

/* Adds the edges of the windows that came, and takes the counts of the last sample. */
static void take_all(uint32_t in_windows[METERS_MAX], uint32_t in_sample[METERS_MAX]) {
    const struct board_frame *frame;
    while ((frame = host_any()) != NULL) {
        for (unsigned i = 0; i < METERS_MAX; i++) {
            if (frame->type == MESSAGE_PULSE_WINDOW && frame->payload[0] == i) {
                in_windows[i] += get_u16(frame->payload + 9);
            } else if (frame->type == MESSAGE_SAMPLE) {
                in_sample[i] = get_u32(frame->payload + SAMPLE_METERS_AT + 8u * i);
            }
        }
    }
}

static const double fast[METERS_MAX] = {100.0, 100.3};
static const double slow[METERS_MAX] = {1000.0, 1000.0};
static const double still[METERS_MAX] = {0.0, 0.0};

static bool start_samples_and_windows(void) {
    uint8_t payload[2];
    put_u16(payload, 200);
    return CHECK(emulated_start(NULL, 1)) && CHECK(host_stream(10, STREAM_SAMPLES))
           && CHECK(host_acknowledged(MESSAGE_WINDOWS, payload, sizeof payload));
}

static void two_fast_meters_slow_no_ramp_and_no_input(void) {
    if (!start_samples_and_windows()) {
        return;
    }
    host_keep_alive(true);
    CHECK(host_arm());
    set_meters(fast);
    emulated_run_ms(50);
    const unsigned ms = ms_of_full_ramp();
    /* 65536 / 131 per ms are 500 ms. */
    CHECK(ms >= 490 && ms <= 510);
    plant.closed = INPUTS_WATCHED & ~INPUT_GUARD;
    CHECK(ms_until_safe(100) <= 20);
    expect_made_safe(REASON_GUARD_OPEN);
    quit();
}

/* Edges that find no room in the ring of a window show there as a jump of the next one's number. */
static void two_fast_meters_lose_no_edge(void) {
    uint32_t in_windows[METERS_MAX] = {0};
    uint32_t in_sample[METERS_MAX] = {0};
    if (!start_samples_and_windows()) {
        return;
    }
    set_meters(fast);
    emulated_run_ms(1000);
    set_meters(slow);
    emulated_run_ms(50);
    set_meters(still);
    emulated_run_ms(450);
    emulated_breathe();
    emulated_step();
    take_all(in_windows, in_sample);
    for (unsigned i = 0; i < METERS_MAX; i++) {
        CHECK(given[i].edges > 9900);
        CHECK_EQUAL(given[i].edges, in_windows[i]);
        CHECK_EQUAL((uint32_t)(EDGES_AT_START + given[i].edges), in_sample[i]);
    }
    quit();
}

void meter_tests(void) {
    RUN(every_edge_of_both_meters_is_counted_and_timed);
    RUN(ten_thousand_edges_a_second_are_all_counted_beside_full_traffic);
    RUN(edges_around_a_turn_of_the_timer_belong_to_the_right_side_of_it);
    RUN(no_meter_hears_the_other);
    RUN(time_and_counts_roll_over_within_the_first_ten_seconds);
    RUN(two_fast_meters_slow_no_ramp_and_no_input);
    RUN(two_fast_meters_lose_no_edge);
    RUN(pulse_windows_hold_every_interval_of_both_meters_beside_samples);
}
