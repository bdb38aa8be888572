/*
 * Over a million random commands, sound and unsound, with random inputs and readings: no drive ever moves and no
 * contactor is pulled but in the states that allow it. Seeded, so every run is the same.
 */
#include "bench.h"
#include "bench_line.h"
#include "bytes.h"
#include "check.h"
#include "suites.h"

#include <string.h>

#define MESSAGES 1050000ul

static uint64_t state;

static uint32_t random_bits(void) {
    state = state * 6364136223846793005u + 1442695040888963407u;
    return (uint32_t)(state >> 33);
}

static bool one_in(uint32_t count) {
    return random_bits() % count == 0;
}

static uint8_t fill_sensibly(uint8_t type, uint8_t *payload) {
    switch (type) {
        case MESSAGE_ARM:
            put_u32(payload, one_in(10) ? random_bits() : description.boot_id);
            return 4;
        case MESSAGE_DRIVE:
            put_u16(put_u32(put_u8(payload, (uint8_t)(random_bits() % 2u)), random_bits() % 66000u),
                    (uint16_t)(random_bits() % 300u));
            return 7;
        case MESSAGE_STREAM:
            put_u8(put_u16(payload, (uint16_t)(random_bits() % 50u)), (uint8_t)(random_bits() % 2u));
            return 3;
        case MESSAGE_TIGHTEN:
            /* Mostly refused, or the board would soon allow nothing. */
            put_u32(put_u8(payload, (uint8_t)(random_bits() % LIMITS)), 60000u + random_bits() % 6000u);
            return 5;
        case MESSAGE_EVENTS_FROM:
            put_u16(payload, (uint16_t)random_bits());
            return 2;
        case MESSAGE_BLOB_READ:
            put_u8(put_u16(put_u8(payload, (uint8_t)(random_bits() % 2u)), (uint16_t)(random_bits() % 256u)),
                   (uint8_t)(1u + random_bits() % 64u));
            return 4;
        case MESSAGE_BLOB_WRITE:
            put_u16(put_u8(payload, (uint8_t)(random_bits() % 2u)), (uint16_t)(random_bits() % 224u));
            return (uint8_t)(4u + random_bits() % 32u);
        case MESSAGE_BLOB_COMMIT:
            put_u16(put_u16(put_u8(payload, 1), 1), (uint16_t)random_bits());
            return 5;
        case MESSAGE_WINDOWS:
            put_u16(payload, (uint16_t)(random_bits() % 300u));
            return 2;
        case MESSAGE_DITHER:
            put_u16(put_u16(put_u8(payload, (uint8_t)(random_bits() % 2u)), (uint16_t)(random_bits() % 8193u)),
                    (uint16_t)(50u + random_bits() % 201u));
            return 5;
        default:
            return 0;
    }
}

static void send_random(void) {
    uint8_t payload[40];
    uint8_t wire[FRAME_WIRE_MAX(sizeof payload)];
    const uint8_t type = (uint8_t)(one_in(20) ? random_bits() : random_bits() % 0x11u);

    for (size_t i = 0; i < sizeof payload; i++) {
        payload[i] = (uint8_t)random_bits();
    }
    uint8_t length = fill_sensibly(type, payload);
    if (one_in(30)) {
        length = (uint8_t)(random_bits() % sizeof payload);
    }
    const struct frame frame = {one_in(40) ? 2u : PROTOCOL_VERSION, type, (uint16_t)random_bits(), length, payload};
    const struct frame_written written = frame_encode(&frame, wire, sizeof wire);
    if (one_in(25)) {
        wire[random_bits() % written.length] ^= (uint8_t)(1u << random_bits() % 8u);
    }
    for (size_t i = 0; i < written.length; i++) {
        bench_line_put(wire[i]);
    }
}

static void disturb(void) {
    hardware.inputs = one_in(12) ? (uint8_t)(random_bits() % 16u) : INPUTS_WATCHED;
    hardware.feedback = one_in(60) ? (int)(random_bits() % 2u) : AUTO_FEEDBACK;
    hardware.line_blocked = one_in(20);
    for (unsigned i = 0; i < ANALOGS_MAX; i++) {
        hardware.analogs[i] = (uint16_t)(one_in(10) ? random_bits() : 10000u);
    }
}

static unsigned wrongs(void) {
    const bool driven = hardware.duty[0] > 0 || hardware.duty[1] > 0;
    const bool may_pull = board.state == STATE_PROVING || board.state == STATE_ARMED;
    unsigned wrong = 0;
    wrong += driven && board.state != STATE_ARMED ? 1u : 0u;
    wrong += hardware.contactor && !may_pull ? 1u : 0u;
    wrong += hardware.lamp && board.state != STATE_ARMED ? 1u : 0u;
    wrong += board.state > STATE_LOCKED ? 1u : 0u;
    return wrong;
}

static void no_command_drives_a_board_that_is_not_armed(void) {
    unsigned long armed = 0;
    unsigned long driven = 0;
    unsigned long locked = 0;
    unsigned wrong = 0;

    state = 20251101u;
    bench_start();
    for (unsigned long i = 0; i < MESSAGES; i++) {
        if (i % 97u == 0) {
            disturb();
        }
        if (i % 5003u == 0) {
            bench_reset_board(RESET_WATCHDOG);
        }
        if (one_in(3)) {
            bench_edge((uint8_t)(random_bits() % 2u));
        }
        send_random();
        for (unsigned poll = 0; poll < 4; poll++) {
            hardware.ticks += 200u + random_bits() % 3000u;
            board_poll(&board);
            wrong += wrongs();
        }
        if (!hardware.line_blocked) {
            bench_line_drain(100);
            bench_forget();
        }
        armed += board.state == STATE_ARMED ? 1u : 0u;
        driven += hardware.duty[0] > 0 ? 1u : 0u;
        locked += board.state == STATE_LOCKED ? 1u : 0u;
    }
    CHECK_EQUAL(0, wrong);
    CHECK_EQUAL(0, heard_bad);
    /* It was about something: each state was visited for a good while. */
    CHECK(armed > MESSAGES / 20u);
    CHECK(driven > MESSAGES / 50u);
    CHECK(locked > MESSAGES / 1000u);
}

void command_fuzz_tests(void) {
    RUN(no_command_drives_a_board_that_is_not_armed);
}
