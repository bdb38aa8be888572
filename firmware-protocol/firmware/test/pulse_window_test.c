/*
 * Pulse windows beside a plain computation in floating point, which keeps every edge of a train and
 * looks at them all at the end.
 */
#include "bench.h"
#include "bytes.h"
#include "check.h"
#include "suites.h"

#include <stdio.h>
#include <string.h>

#define EDGES_MAX 4000u

struct train {
    uint64_t at[EDGES_MAX]; /* board time without roll-over */
    unsigned count;
};

static struct train trains[METERS_MAX];
static uint64_t long_time; /* board time without roll-over */
static uint32_t seed;

static uint32_t random_below(uint32_t bound) {
    seed = seed * 1664525u + 1013904223u;
    return (seed >> 8) % bound;
}

static void start_at(uint32_t ticks) {
    bench_start_at(ticks);
    long_time = hardware.ticks;
    trains[0].count = 0;
    trains[1].count = 0;
}

static void note_edge(uint8_t meter) {
    bench_edge(meter);
    if (CHECK(trains[meter].count < EDGES_MAX)) {
        trains[meter].at[trains[meter].count++] = long_time;
    }
}

/* Runs for so many milliseconds with edges about every `apart` polls. */
static void run_train(unsigned ms, uint32_t apart) {
    for (unsigned i = 0; i < 10u * ms; i++) {
        for (uint8_t meter = 0; meter < METERS_MAX; meter++) {
            if (random_below(apart * (meter + 1u)) == 0) {
                note_edge(meter);
            }
        }
        bench_run_ticks(200);
        long_time += 200;
    }
}

static uint64_t get_u64(const uint8_t *at) {
    return get_u32(at) | (uint64_t)get_u32(at + 4) << 32;
}

/* What the plain computation says about one window. */
struct plain {
    unsigned edges;
    uint32_t first;
    uint32_t last;
    unsigned intervals;
    double sum;
    double squares;
    double lagged;
    double least;
    double most;
    unsigned long_ones;
    unsigned short_ones;
};

static struct plain plain_window(const struct train *train, uint64_t begin, uint64_t end, uint32_t reference) {
    struct plain plain;
    memset(&plain, 0, sizeof plain);
    for (unsigned i = 0; i < train->count; i++) {
        if (train->at[i] < begin || train->at[i] >= end) {
            continue;
        }
        if (plain.edges++ == 0) {
            plain.first = (uint32_t)train->at[i];
        }
        plain.last = (uint32_t)train->at[i];
        if (i == 0) {
            continue;
        }
        const double interval = (double)(train->at[i] - train->at[i - 1]);
        plain.least = plain.intervals == 0 || interval < plain.least ? interval : plain.least;
        plain.most = interval > plain.most ? interval : plain.most;
        plain.intervals++;
        plain.sum += interval;
        plain.squares += interval * interval;
        if (i > 1) {
            plain.lagged += interval * (double)(train->at[i - 1] - train->at[i - 2]);
        }
        if (reference > 0) {
            plain.long_ones += interval * 5.0 > (double)reference * 8.0 ? 1u : 0u;
            plain.short_ones += interval * 2.0 < (double)reference ? 1u : 0u;
        }
    }
    return plain;
}

/* Compares a window; `begin` is its begin without roll-over. Returns its mean, which is the next one's reference. */
static uint32_t check_window(const uint8_t *at, const struct train *train, uint64_t begin, uint32_t reference) {
    const uint64_t end = begin + (get_u32(at + 5) - get_u32(at + 1));
    const struct plain plain = plain_window(train, begin, end, reference);
    CHECK_EQUAL((uint32_t)begin, get_u32(at + 1));
    CHECK_EQUAL(plain.edges, get_u16(at + 9));
    CHECK_EQUAL(plain.first, get_u32(at + 11));
    CHECK_EQUAL(plain.last, get_u32(at + 15));
    CHECK_EQUAL(plain.intervals, get_u16(at + 19));
    CHECK(plain.sum == (double)get_u32(at + 21));
    CHECK(plain.squares == (double)get_u64(at + 25));
    CHECK(plain.lagged == (double)get_u64(at + 33));
    CHECK(plain.least == (double)get_u32(at + 41));
    CHECK(plain.most == (double)get_u32(at + 45));
    CHECK_EQUAL(plain.long_ones, get_u16(at + 49));
    CHECK_EQUAL(plain.short_ones, get_u16(at + 51));
    CHECK_EQUAL(reference, get_u32(at + 53));
    return plain.intervals == 0 ? 0 : (uint32_t)(plain.sum / plain.intervals);
}

/* The first window of meter 0 that was heard. */
static const uint8_t *first_window(void) {
    static const uint8_t none[PULSE_WINDOW_LENGTH];
    for (unsigned i = 0; i < heard_count; i++) {
        if (heard[i].type == MESSAGE_PULSE_WINDOW && heard[i].payload[0] == 0) {
            return heard[i].payload;
        }
    }
    CHECK(false);
    return none;
}

/* Compares all windows heard. Returns how many there were. */
static unsigned check_windows(uint64_t first_begin) {
    unsigned windows = 0;
    for (uint8_t meter = 0; meter < METERS_MAX; meter++) {
        uint32_t reference = 0;
        uint64_t begin = first_begin;
        for (unsigned i = 0; i < heard_count; i++) {
            const uint8_t *const at = heard[i].payload;
            if (heard[i].type != MESSAGE_PULSE_WINDOW || at[0] != meter) {
                continue;
            }
            CHECK_EQUAL(57, heard[i].length);
            reference = check_window(at, &trains[meter], begin, reference);
            begin += get_u32(at + 5) - get_u32(at + 1);
            windows++;
        }
    }
    return windows;
}

static uint64_t begin_windows(uint16_t period_ms) {
    bench_windows(period_ms);
    long_time += (uint32_t)(hardware.ticks - (uint32_t)long_time);
    const uint32_t ago = hardware.ticks - board.pulse_meters[0].window.begin;
    bench_forget();
    return long_time - ago;
}

static void random_trains_are_told_exactly(void) {
    char context[80];
    for (unsigned turn = 0; turn < 40; turn++) {
        seed = turn + 1u;
        snprintf(context, sizeof context, "turn %u", turn);
        check_context(context);
        start_at(turn % 2 == 0 ? TICKS_AT_START : 0u - (100u + random_below(600)) * TICKS_PER_MS);
        run_train(random_below(50), 10);
        const uint64_t begin = begin_windows((uint16_t)(100u + random_below(200)));
        run_train(1000, 10u + random_below(400));
        CHECK(check_windows(begin) >= 6);
    }
}

static void the_interval_that_began_before_the_windows_belongs_to_the_first(void) {
    start_at(TICKS_AT_START);
    note_edge(0);
    bench_run_ms(5);
    const uint64_t begin = begin_windows(100);
    long_time += (uint32_t)(hardware.ticks - (uint32_t)long_time);
    note_edge(0);
    bench_run_ms(110);
    CHECK_EQUAL(2, check_windows(begin));
    CHECK_EQUAL(1, get_u16(first_window() + 19));
}

static void a_still_meter_gives_empty_windows_with_reference_zero(void) {
    bench_start();
    bench_windows(100);
    bench_run_ms(5);
    bench_forget();
    bench_run_ms(1005);
    CHECK_EQUAL(20, bench_count(MESSAGE_PULSE_WINDOW));
    CHECK_EQUAL(20, heard_count);
    for (unsigned i = 0; i < heard_count; i++) {
        for (unsigned at = 9; at < 57; at++) {
            CHECK_EQUAL(0, heard[i].payload[at]);
        }
        CHECK_EQUAL(200000, get_u32(heard[i].payload + 5) - get_u32(heard[i].payload + 1));
    }
}

static void long_and_short_are_counted_beyond_the_exact_fractions(void) {
    /* Reference 1005: long above 1608, short below 502.5. */
    static const uint32_t intervals[] = {1608, 1609, 502, 503, 1005};
    struct pulse_meter meter;
    struct pulse_window closed;
    struct edge edge = {0, 0};

    pulse_meter_start(&meter);
    pulse_meter_begin(&meter, 0);
    for (unsigned i = 0; i < 10; i++) {
        edge.time += 1005;
        edge.number++;
        pulse_meter_take(&meter, &edge);
    }
    pulse_meter_close(&meter, edge.time + 1u, &closed);
    CHECK_EQUAL(0, closed.long_ones);
    for (size_t i = 0; i < sizeof intervals / sizeof *intervals; i++) {
        edge.time += intervals[i];
        edge.number++;
        pulse_meter_take(&meter, &edge);
    }
    pulse_meter_close(&meter, edge.time + 1u, &closed);
    CHECK_EQUAL(1005, closed.reference);
    CHECK_EQUAL(1, closed.long_ones);
    CHECK_EQUAL(1, closed.short_ones);
}

static void the_fractions_are_exact_for_every_kind_of_reference(void) {
    seed = 9;
    for (unsigned i = 0; i < 2000; i++) {
        const uint32_t reference = i < 40 ? i + 1u : (random_below(0x7FFF) << 16) + random_below(0x10000);
        struct pulse_meter meter;
        struct pulse_window closed;
        struct edge edge = {reference, 1};
        pulse_meter_start(&meter);
        pulse_meter_begin(&meter, 0);
        meter.knows_edge = true;
        pulse_meter_take(&meter, &edge);
        pulse_meter_close(&meter, reference + 1u, &closed);
        CHECK_EQUAL((uint64_t)reference * 8u / 5u, meter.long_above);
        CHECK_EQUAL(((uint64_t)reference + 1u) / 2u, meter.short_below);
    }
}

static void an_edge_that_was_lost_spoils_no_interval(void) {
    bench_start();
    bench_windows(1000);
    bench_forget();
    for (unsigned i = 0; i < 10; i++) {
        bench_edge(0);
        bench_run_ms(10);
        if (i == 5) {
            /* Counted, but its place in the ring was taken. */
            hardware.meters[0].count++;
        }
    }
    bench_run_ms(1000);
    const uint8_t *const window = first_window();
    CHECK_EQUAL(11, get_u16(window + 9));
    CHECK_EQUAL(8, get_u16(window + 19));
    CHECK_EQUAL(10u * TICKS_PER_MS, get_u32(window + 45));
    /* The interval behind the lost edge has no known one before it. */
    CHECK_EQUAL(6ull * 20000u * 20000u, get_u64(window + 33));
}

static void an_edge_of_half_an_hour_ago_is_forgotten(void) {
    bench_start();
    bench_windows(10000);
    bench_edge(0);
    bench_run_ms(1);
    for (unsigned i = 0; i < 2000; i++) {
        hardware.ticks += 1000u * TICKS_PER_MS;
        board_poll(&board);
        bench_run_ms(5);
        bench_forget();
    }
    bench_edge(0);
    bench_run_ms(5000);
    bench_run_ms(5100);
    unsigned edges = 0;
    for (unsigned i = 0; i < heard_count; i++) {
        if (heard[i].type == MESSAGE_PULSE_WINDOW) {
            edges += get_u16(heard[i].payload + 9);
            CHECK_EQUAL(0, get_u16(heard[i].payload + 19));
        }
    }
    CHECK_EQUAL(1, edges);
}

static void windows_are_told_under_full_streaming_and_lose_nothing(void) {
    start_at(TICKS_AT_START);
    seed = 5;
    bench_short_stream(1);
    const uint64_t begin = begin_windows(100);
    run_train(2000, 40);
    CHECK(check_windows(begin) >= 38);
}

static void the_same_period_again_changes_nothing_and_zero_ends_it(void) {
    bench_start();
    bench_windows(200);
    bench_run_ms(150);
    bench_check_acknowledged(bench_windows(200), MESSAGE_WINDOWS);
    bench_forget();
    bench_run_ms(55);
    CHECK_EQUAL(2, bench_count(MESSAGE_PULSE_WINDOW));
    bench_check_acknowledged(bench_windows(0), MESSAGE_WINDOWS);
    bench_forget();
    bench_run_ms(1000);
    CHECK_EQUAL(0, heard_count);
}

static void a_count_that_would_overflow_stays_at_its_highest(void) {
    struct pulse_meter meter;
    struct pulse_window closed;
    struct edge edge = {0, 0};
    pulse_meter_start(&meter);
    pulse_meter_begin(&meter, 0);
    for (uint32_t i = 0; i < 70000; i++) {
        edge.time += 100;
        edge.number++;
        pulse_meter_take(&meter, &edge);
    }
    pulse_meter_close(&meter, edge.time, &closed);
    CHECK_EQUAL(65535, closed.edges);
    CHECK_EQUAL(65535, closed.intervals);
    CHECK_EQUAL(6553500, closed.sum);
}

void pulse_window_tests(void) {
    RUN(random_trains_are_told_exactly);
    RUN(the_interval_that_began_before_the_windows_belongs_to_the_first);
    RUN(a_still_meter_gives_empty_windows_with_reference_zero);
    RUN(long_and_short_are_counted_beyond_the_exact_fractions);
    RUN(the_fractions_are_exact_for_every_kind_of_reference);
    RUN(an_edge_that_was_lost_spoils_no_interval);
    RUN(an_edge_of_half_an_hour_ago_is_forgotten);
    RUN(windows_are_told_under_full_streaming_and_lose_nothing);
    RUN(the_same_period_again_changes_nothing_and_zero_ends_it);
    RUN(a_count_that_would_overflow_stays_at_its_highest);
}
