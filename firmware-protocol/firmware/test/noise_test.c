/* A hostile line: garbage, cut and corrupted frames. Random numbers are seeded, so every run is the same. */
#include "bench.h"
#include "bytes.h"
#include "check.h"
#include "suites.h"

#include <string.h>

static uint32_t seed;

static uint8_t random_byte(void) {
    seed = seed * 1664525u + 1013904223u;
    return (uint8_t)(seed >> 24);
}

static size_t arm_frame(uint8_t *wire, size_t capacity) {
    uint8_t payload[4];
    put_u32(payload, BOOT_ID);
    const struct frame frame = {PROTOCOL_VERSION, MESSAGE_ARM, 77, sizeof payload, payload};
    return frame_encode(&frame, wire, capacity).length;
}

static size_t drive_frame(uint8_t *wire, size_t capacity) {
    uint8_t payload[7];
    put_u16(put_u32(put_u8(payload, 0), DUTY_FULL), 0);
    const struct frame frame = {PROTOCOL_VERSION, MESSAGE_DRIVE, 78, sizeof payload, payload};
    return frame_encode(&frame, wire, capacity).length;
}

static void garbage_is_neither_obeyed_nor_answered(void) {
    bench_start();
    bench_forget();
    seed = 1;
    for (unsigned i = 0; i < 200000; i++) {
        const uint8_t byte = random_byte();
        bench_send_bytes(&byte, 1);
        if (i % 16 == 0) {
            board_poll(&board);
        }
    }
    bench_run_ms(50);
    bench_check_safe();
    CHECK_EQUAL(0, bench_count(MESSAGE_ACKNOWLEDGE));
    CHECK(board.receiver.dropped > 100);
}

static void garbage_is_no_sign_of_life(void) {
    bench_start();
    bench_arm();
    seed = 2;
    for (unsigned i = 0; i < 25000; i++) {
        const uint8_t byte = random_byte();
        bench_send_bytes(&byte, 1);
        if (i % 25 == 0) {
            bench_run_ms(1);
        }
    }
    bench_check_safe();
    bench_check_event(EVENT_MADE_SAFE, REASON_LINK_LOST, 0);
}

static void no_single_flipped_bit_arms_the_board(void) {
    uint8_t wire[32];
    const size_t length = arm_frame(wire, sizeof wire);

    bench_start();
    bench_forget();
    for (size_t bit = 0; bit < 8u * length; bit++) {
        uint8_t hurt[sizeof wire];
        const uint8_t end = 0;
        memcpy(hurt, wire, length);
        hurt[bit / 8u] ^= (uint8_t)(1u << (bit % 8u));
        bench_send_bytes(hurt, (uint32_t)length);
        bench_send_bytes(&end, 1);
        bench_run_ms(1);
        bench_check_safe();
    }
    bench_run_ms(20);
    CHECK_EQUAL(0, heard_count);
}

static void no_two_flipped_bits_drive_an_armed_board(void) {
    uint8_t wire[32];
    const size_t length = drive_frame(wire, sizeof wire);

    bench_start();
    bench_arm();
    bench_run_ms(5);
    bench_forget();
    for (size_t first = 0; first < 8u * length; first++) {
        for (size_t second = first + 1u; second < 8u * length; second++) {
            uint8_t hurt[sizeof wire];
            const uint8_t end = 0;
            memcpy(hurt, wire, length);
            hurt[first / 8u] ^= (uint8_t)(1u << (first % 8u));
            hurt[second / 8u] ^= (uint8_t)(1u << (second % 8u));
            bench_send_bytes(hurt, (uint32_t)length);
            bench_send_bytes(&end, 1);
            bench_run_ticks(200);
        }
        bench_keep_alive();
    }
    CHECK_EQUAL(STATE_ARMED, board.state);
    CHECK_EQUAL(0, board.drives[0].target);
    CHECK_EQUAL(0, bench_count(MESSAGE_ACKNOWLEDGE));
    CHECK_EQUAL(0, bench_count(MESSAGE_REFUSE));
}

static void a_frame_cut_anywhere_is_not_obeyed(void) {
    uint8_t wire[32];
    const uint8_t end = 0;
    const size_t length = arm_frame(wire, sizeof wire);

    for (size_t from = 0; from < length - 1u; from++) {
        for (size_t to = from + 1u; to < length; to++) {
            if (from == 0 && to == length - 1u) {
                continue;
            }
            bench_start();
            bench_send_bytes(wire + from, (uint32_t)(to - from));
            bench_send_bytes(&end, 1);
            bench_run_ms(1);
            bench_check_safe();
        }
    }
}

static void a_lost_delimiter_costs_both_frames_but_not_the_next(void) {
    uint8_t wire[32];
    const size_t length = arm_frame(wire, sizeof wire);

    bench_start();
    bench_send_bytes(wire, (uint32_t)length - 1u);
    bench_send_bytes(wire, (uint32_t)length);
    bench_run_ms(2);
    bench_check_safe();
    bench_send_bytes(wire, (uint32_t)length);
    bench_run_ms(15);
    CHECK_EQUAL(STATE_ARMED, board.state);
}

static void make_safe_gets_through_after_noise(void) {
    uint8_t noise[300];
    bench_start();
    bench_arm();
    seed = 3;
    for (size_t i = 0; i < sizeof noise; i++) {
        noise[i] = (uint8_t)(random_byte() | 1u);
    }
    bench_send_bytes(noise, sizeof noise);
    CHECK_EQUAL(STATE_ARMED, board.state);
    bench_send_bytes((const uint8_t[]){0}, 1);
    bench_check_acknowledged(bench_make_safe(), MESSAGE_MAKE_SAFE);
    bench_check_safe();
}

void noise_tests(void) {
    RUN(garbage_is_neither_obeyed_nor_answered);
    RUN(garbage_is_no_sign_of_life);
    RUN(no_single_flipped_bit_arms_the_board);
    RUN(no_two_flipped_bits_drive_an_armed_board);
    RUN(a_frame_cut_anywhere_is_not_obeyed);
    RUN(a_lost_delimiter_costs_both_frames_but_not_the_next);
    RUN(make_safe_gets_through_after_noise);
}
