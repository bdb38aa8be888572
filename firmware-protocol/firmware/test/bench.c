#include "bench.h"

#include "bench_line.h"
#include "bytes.h"
#include "check.h"

#include <string.h>

#define POLL_TICKS 200u
#define POLLS_PER_MS (TICKS_PER_MS / POLL_TICKS)
#define BYTES_PER_MS 25u

static const struct description first_description = {
    .boot_id = BOOT_ID,
    .reset_cause = RESET_POWER_ON,
    .meters = 2,
    .drives = 2,
    .analogs = 4,
    .tick_hz = TICKS_PER_MS * 1000u,
    .pwm_hz = {7812, 150},
    .ramp_limit = 131,
    .roles = {ROLE_VOLTS, ROLE_AMPS, ROLE_PRESSURE, ROLE_TEMPERATURE},
    .limits = {49152, 50, 2400000, 58982, 100, 52429, 5000, 0, 5000, 55706, 50, 750},
    .kind = {'b', 'e', 'n', 'c', 'h', 0, 0, 0},
};

struct board board;
struct description description;

static uint16_t next_sequence;
static unsigned polls;

void bench_start_at(uint32_t ticks) {
    bench_hardware_start(ticks);
    bench_store_blank();
    bench_line_start();
    description = first_description;
    next_sequence = 0;
    polls = 0;
    board_start(&board, &description, PROTOCOL_VERSION);
    bench_line_put(0);
    bench_run_ms(5);
}

void bench_start(void) {
    bench_start_at(TICKS_AT_START);
}

void bench_reset_board(uint8_t reset_cause) {
    const uint32_t boot_id = description.boot_id + 1u;
    description = first_description;
    description.boot_id = boot_id;
    description.reset_cause = reset_cause;
    bench_hardware_reset();
    board_start(&board, &description, PROTOCOL_VERSION);
    bench_line_put(0);
    bench_run_ms(5);
}

void bench_run_ticks(uint32_t ticks) {
    for (uint32_t done = 0; done < ticks; done += POLL_TICKS) {
        hardware.ticks += POLL_TICKS;
        board_poll(&board);
        if (++polls % POLLS_PER_MS == 0 && !hardware.line_blocked) {
            bench_line_drain(BYTES_PER_MS);
        }
    }
}

void bench_run_ms(uint32_t ms) {
    bench_run_ticks(ms * TICKS_PER_MS);
}

void bench_send_bytes(const uint8_t *bytes, uint32_t length) {
    for (uint32_t i = 0; i < length; i++) {
        bench_line_put(bytes[i]);
        if (i % BYTES_PER_MS == BYTES_PER_MS - 1u) {
            bench_run_ms(1);
        }
    }
}

uint16_t bench_send_version(uint8_t version, uint8_t type, const uint8_t *payload, uint8_t length) {
    const struct frame frame = {version, type, next_sequence++, length, payload};
    uint8_t wire[FRAME_WIRE_MAX(FRAME_PAYLOAD_MAX)];
    const struct frame_written written = frame_encode(&frame, wire, sizeof wire);

    CHECK(written.fitted);
    bench_send_bytes(wire, (uint32_t)written.length);
    bench_run_ticks(TICKS_PER_MS / 2u);
    return frame.sequence;
}

uint16_t bench_send(uint8_t type, const uint8_t *payload, uint8_t length) {
    return bench_send_version(PROTOCOL_VERSION, type, payload, length);
}

uint16_t bench_send_arm(void) {
    uint8_t payload[4];
    put_u32(payload, description.boot_id);
    return bench_send(MESSAGE_ARM, payload, sizeof payload);
}

uint16_t bench_arm(void) {
    const uint16_t sequence = bench_send_arm();
    bench_run_ms(15);
    return sequence;
}

uint16_t bench_drive(uint8_t channel, uint32_t duty, uint16_t ramp) {
    uint8_t payload[7];
    put_u16(put_u32(put_u8(payload, channel), duty), ramp);
    return bench_send(MESSAGE_DRIVE, payload, sizeof payload);
}

static uint16_t stream(uint16_t period_ms, uint8_t kind) {
    uint8_t payload[3];
    put_u8(put_u16(payload, period_ms), kind);
    return bench_send(MESSAGE_STREAM, payload, sizeof payload);
}

uint16_t bench_stream(uint16_t period_ms) {
    return stream(period_ms, STREAM_SAMPLES);
}

uint16_t bench_short_stream(uint16_t period_ms) {
    return stream(period_ms, STREAM_SHORT_SAMPLES);
}

uint16_t bench_windows(uint16_t period_ms) {
    uint8_t payload[2];
    put_u16(payload, period_ms);
    return bench_send(MESSAGE_WINDOWS, payload, sizeof payload);
}

uint16_t bench_dither(uint8_t channel, uint16_t amplitude, uint16_t hz) {
    uint8_t payload[5];
    put_u16(put_u16(put_u8(payload, channel), amplitude), hz);
    return bench_send(MESSAGE_DITHER, payload, sizeof payload);
}

uint16_t bench_tighten(uint8_t limit, uint32_t value) {
    uint8_t payload[5];
    put_u32(put_u8(payload, limit), value);
    return bench_send(MESSAGE_TIGHTEN, payload, sizeof payload);
}

uint16_t bench_events_from(uint16_t number) {
    uint8_t payload[2];
    put_u16(payload, number);
    return bench_send(MESSAGE_EVENTS_FROM, payload, sizeof payload);
}

uint16_t bench_blob_read(uint8_t blob, uint16_t offset, uint8_t count) {
    uint8_t payload[4];
    put_u8(put_u16(put_u8(payload, blob), offset), count);
    return bench_send(MESSAGE_BLOB_READ, payload, sizeof payload);
}

uint16_t bench_blob_write(uint8_t blob, uint16_t offset, const uint8_t *bytes, uint8_t count) {
    uint8_t payload[3u + BLOB_WRITE_MAX];
    memcpy(put_u16(put_u8(payload, blob), offset), bytes, count);
    return bench_send(MESSAGE_BLOB_WRITE, payload, (uint8_t)(3u + count));
}

uint16_t bench_blob_commit(uint8_t blob, uint16_t length, uint16_t crc) {
    uint8_t payload[5];
    put_u16(put_u16(put_u8(payload, blob), length), crc);
    return bench_send(MESSAGE_BLOB_COMMIT, payload, sizeof payload);
}

uint16_t bench_make_safe(void) {
    return bench_send(MESSAGE_MAKE_SAFE, NULL, 0);
}

uint16_t bench_keep_alive(void) {
    return bench_send(MESSAGE_KEEP_ALIVE, NULL, 0);
}

void bench_run_alive_ms(uint32_t ms) {
    const uint32_t until = hardware.ticks + ms * TICKS_PER_MS;
    while ((int32_t)(until - hardware.ticks) > 0) {
        const uint32_t left = until - hardware.ticks;
        const uint32_t quarter = 250u * TICKS_PER_MS;
        bench_keep_alive();
        bench_run_ticks(left < quarter ? left : quarter);
    }
}

const struct heard *bench_last(uint8_t type) {
    for (unsigned i = heard_count; i > 0; i--) {
        if (heard[i - 1].type == type) {
            return &heard[i - 1];
        }
    }
    return NULL;
}

unsigned bench_count(uint8_t type) {
    unsigned count = 0;
    for (unsigned i = 0; i < heard_count; i++) {
        count += heard[i].type == type ? 1u : 0u;
    }
    return count;
}

void bench_check_acknowledged(uint16_t sequence, uint8_t type) {
    bench_run_ms(2);
    const struct heard *const answer = bench_last(MESSAGE_ACKNOWLEDGE);
    if (CHECK(answer != NULL)) {
        CHECK_EQUAL(3, answer->length);
        CHECK_EQUAL(sequence, get_u16(answer->payload));
        CHECK_EQUAL(type, answer->payload[2]);
    }
}

void bench_check_refused(uint16_t sequence, uint8_t type, uint8_t reason, int32_t detail) {
    bench_run_ms(2);
    const struct heard *const answer = bench_last(MESSAGE_REFUSE);
    if (CHECK(answer != NULL)) {
        CHECK_EQUAL(8, answer->length);
        CHECK_EQUAL(sequence, get_u16(answer->payload));
        CHECK_EQUAL(type, answer->payload[2]);
        CHECK_EQUAL(reason, answer->payload[3]);
        CHECK_EQUAL(detail, (int32_t)get_u32(answer->payload + 4));
    }
}

static void check_outputs_safe(void) {
    CHECK_EQUAL(0, hardware.duty[0]);
    CHECK_EQUAL(0, hardware.duty[1]);
    CHECK(!hardware.contactor);
    CHECK(!hardware.lamp);
}

void bench_rest(void) {
    bench_run_ms(15);
}

void bench_check_safe(void) {
    CHECK_EQUAL(STATE_SAFE, board.state);
    check_outputs_safe();
}

void bench_check_locked(void) {
    CHECK_EQUAL(STATE_LOCKED, board.state);
    check_outputs_safe();
}
void bench_check_event(uint8_t kind, uint8_t reason, int32_t detail) {
    bench_run_ms(3);
    const struct heard *const event = bench_last(MESSAGE_EVENT);
    if (CHECK(event != NULL)) {
        CHECK_EQUAL(12, event->length);
        CHECK_EQUAL(kind, event->payload[6]);
        CHECK_EQUAL(reason, event->payload[7]);
        CHECK_EQUAL(detail, (int32_t)get_u32(event->payload + 8));
    }
}
