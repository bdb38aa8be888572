/* Blobs in the chip's EEPROM. */
#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "bytes.h"
#include "check.h"
#include "crc16.h"
#include "elf_suites.h"

#define IDENTITY_BLOB 0u
#define CALIBRATION_BLOB 1u
#define LENGTH 40u

static char eeprom[] = "/tmp/stand-eeprom-XXXXXX";

static bool start_with_eeprom(void) {
    return CHECK(emulated_start(eeprom, EXCHANGE_MS));
}

static bool make_eeprom(void) {
    const int file = mkstemp(eeprom);
    if (!CHECK(file >= 0)) {
        return false;
    }
    close(file);
    unlink(eeprom);
    return true;
}

static void remove_eeprom(void) {
    unlink(eeprom);
    strcpy(eeprom + strlen(eeprom) - 6u, "XXXXXX");
}

static void fill(uint8_t *bytes, uint8_t from) {
    for (uint8_t i = 0; i < LENGTH; i++) {
        bytes[i] = (uint8_t)(from + i);
    }
}

static uint8_t write_payload(uint8_t *payload, uint8_t blob, const uint8_t *bytes, uint8_t from, uint8_t count) {
    memcpy(put_u16(put_u8(payload, blob), from), bytes + from, count);
    return (uint8_t)(3u + count);
}

static bool write_part(uint8_t blob, const uint8_t *bytes, uint8_t from, uint8_t count) {
    uint8_t payload[3 + BLOB_WRITE_MAX];
    const uint8_t length = write_payload(payload, blob, bytes, from, count);
    return host_acknowledged(MESSAGE_BLOB_WRITE, payload, length);
}

static void commit_payload(uint8_t payload[5], uint8_t blob, const uint8_t *bytes) {
    put_u16(put_u16(put_u8(payload, blob), LENGTH), crc16(bytes, LENGTH));
}

static bool write_blob(uint8_t blob, const uint8_t *bytes) {
    uint8_t payload[5];
    commit_payload(payload, blob, bytes);
    return write_part(blob, bytes, 0, BLOB_WRITE_MAX)
           && write_part(blob, bytes, BLOB_WRITE_MAX, LENGTH - BLOB_WRITE_MAX)
           && host_acknowledged(MESSAGE_BLOB_COMMIT, payload, sizeof payload);
}

static bool reads(uint8_t blob, const uint8_t *bytes) {
    uint8_t payload[4];
    put_u8(put_u16(put_u8(payload, blob), 0), BLOB_READ_MAX);
    const struct board_frame *const data = host_ask(MESSAGE_BLOB_READ, payload, sizeof payload, MESSAGE_BLOB_DATA);
    return data != NULL && data->length == 5u + LENGTH && get_u16(data->payload + 3) == LENGTH
           && memcmp(data->payload + 5, bytes, LENGTH) == 0;
}

static void blobs_survive_a_reset_and_the_end_of_the_supply(void) {
    uint8_t identity[LENGTH];
    uint8_t calibration[LENGTH];
    if (!make_eeprom() || !start_with_eeprom()) {
        return;
    }
    fill(identity, 1);
    fill(calibration, 101);
    const uint32_t first_boot = host_boot_id();
    CHECK(write_blob(IDENTITY_BLOB, identity));
    CHECK(write_blob(CALIBRATION_BLOB, calibration));
    CHECK(reads(IDENTITY_BLOB, identity));
    emulated_command("reset");
    emulated_run_ms(100);
    const struct board_frame *board = host_hello();
    if (CHECK(board != NULL)) {
        CHECK_BYTES(identity, UNIQUE_ID_BYTES, board->payload, UNIQUE_ID_BYTES);
    }
    CHECK(reads(CALIBRATION_BLOB, calibration));
    quit();
    if (!start_with_eeprom()) {
        return;
    }
    board = host_hello();
    if (CHECK(board != NULL)) {
        CHECK_BYTES(identity, UNIQUE_ID_BYTES, board->payload, UNIQUE_ID_BYTES);
        CHECK(get_u32(board->payload + 11) != first_boot);
    }
    CHECK(reads(IDENTITY_BLOB, identity));
    CHECK(reads(CALIBRATION_BLOB, calibration));
    quit();
    remove_eeprom();
}

/* Sends the whole new blob, and cuts the supply so many milliseconds after its first byte. */
static void cut_while_writing(const uint8_t *bytes, unsigned cut_ms) {
    const unsigned long long began = pins.us;
    uint8_t payload[3 + BLOB_WRITE_MAX];
    for (unsigned step = 0; step < 3; step++) {
        const uint8_t from = step == 0 ? 0 : BLOB_WRITE_MAX;
        uint8_t length = 5;
        if (step < 2) {
            length = write_payload(payload, CALIBRATION_BLOB, bytes, from,
                                   step == 0 ? BLOB_WRITE_MAX : LENGTH - BLOB_WRITE_MAX);
        } else {
            commit_payload(payload, CALIBRATION_BLOB, bytes);
        }
        host_forget();
        host_send(step < 2 ? MESSAGE_BLOB_WRITE : MESSAGE_BLOB_COMMIT, payload, length);
        while (pins.us - began < cut_ms * 1000ull) {
            if (host_wait(MESSAGE_ACKNOWLEDGE, 0) != NULL) {
                break;
            }
        }
    }
    emulated_command("brown-out");
    emulated_run_ms(100);
}

static void a_cut_at_any_moment_of_writing_leaves_the_old_blob_or_the_new_one(void) {
    uint8_t versions[2][LENGTH];
    unsigned kept = 0;
    unsigned stored_old = 0;
    unsigned stored_new = 0;
    if (!CHECK(emulated_start(NULL, 1))) {
        return;
    }
    fill(versions[0], 1);
    fill(versions[1], 150);
    CHECK(write_blob(CALIBRATION_BLOB, versions[kept]));
    for (unsigned cut_ms = 3; cut_ms < 250; cut_ms += 3) {
        cut_while_writing(versions[1u - kept], cut_ms);
        CHECK(host_hello() != NULL);
        if (reads(CALIBRATION_BLOB, versions[1u - kept])) {
            kept = 1u - kept;
            stored_new++;
        } else {
            CHECK(reads(CALIBRATION_BLOB, versions[kept]));
            stored_old++;
        }
    }
    CHECK(stored_old > 10 && stored_new > 5);
    quit();
}

static void a_killed_supply_leaves_the_eeprom_whole(void) {
    uint8_t old_bytes[LENGTH];
    uint8_t new_bytes[LENGTH];
    if (!make_eeprom() || !start_with_eeprom()) {
        return;
    }
    fill(old_bytes, 7);
    fill(new_bytes, 77);
    CHECK(write_blob(CALIBRATION_BLOB, old_bytes));
    CHECK(write_part(CALIBRATION_BLOB, new_bytes, 0, BLOB_WRITE_MAX));
    uint8_t payload[3 + BLOB_WRITE_MAX];
    const uint8_t length = write_payload(payload, CALIBRATION_BLOB, new_bytes, BLOB_WRITE_MAX, LENGTH - BLOB_WRITE_MAX);
    host_send(MESSAGE_BLOB_WRITE, payload, length);
    emulated_run_ms(10);
    CHECK_EQUAL(-1, emulated_kill());
    if (!start_with_eeprom()) {
        return;
    }
    CHECK(reads(CALIBRATION_BLOB, old_bytes));
    CHECK(write_blob(CALIBRATION_BLOB, new_bytes));
    CHECK(reads(CALIBRATION_BLOB, new_bytes));
    quit();
    remove_eeprom();
}

static void short_samples_go_on_evenly_while_the_board_writes(void) {
    uint8_t bytes[LENGTH];
    uint8_t payload[3 + BLOB_WRITE_MAX];
    const struct board_frame *frame;
    uint32_t time = 0;
    unsigned samples = 0;
    unsigned late = 0;
    if (!start()) {
        return;
    }
    fill(bytes, 3);
    CHECK(host_stream(2, STREAM_SHORT_SAMPLES));
    const uint8_t length = write_payload(payload, CALIBRATION_BLOB, bytes, 0, BLOB_WRITE_MAX);
    host_forget();
    host_send(MESSAGE_BLOB_WRITE, payload, length);
    for (unsigned i = 0; i < 20; i++) {
        while ((frame = host_wait(MESSAGE_SHORT_SAMPLE, 0)) != NULL) {
            const uint32_t now = get_u32(frame->payload);
            late += samples > 0 && now - time > 6000u;
            time = now;
            samples++;
        }
    }
    CHECK(samples >= 45);
    CHECK_EQUAL(0, late);
    quit();
}

static void a_board_is_busy_but_answers_while_it_writes(void) {
    uint8_t bytes[LENGTH];
    uint8_t payload[3 + BLOB_WRITE_MAX];
    if (!start()) {
        return;
    }
    fill(bytes, 3);
    CHECK(host_stream(10, STREAM_SAMPLES));
    const uint8_t length = write_payload(payload, CALIBRATION_BLOB, bytes, 0, BLOB_WRITE_MAX);
    const unsigned long long began = pins.us;
    host_send(MESSAGE_BLOB_WRITE, payload, length);
    CHECK_EQUAL(REFUSE_BUSY, host_refused(MESSAGE_BLOB_WRITE, payload, length).reason);
    CHECK(host_acknowledged(MESSAGE_MAKE_SAFE, NULL, 0));
    CHECK(host_wait(MESSAGE_SAMPLE, 50) != NULL);
    CHECK(host_wait(MESSAGE_ACKNOWLEDGE, 500) != NULL);
    const unsigned after_ms = (unsigned)((pins.us - began) / 1000u);
    CHECK(after_ms >= 32u * 34u / 10u && after_ms <= 500);
    armed_at_half();
    CHECK_EQUAL(REFUSE_NOT_SAFE, host_refused(MESSAGE_BLOB_WRITE, payload, length).reason);
    quit();
}

void store_tests(void) {
    RUN(blobs_survive_a_reset_and_the_end_of_the_supply);
    RUN(a_cut_at_any_moment_of_writing_leaves_the_old_blob_or_the_new_one);
    RUN(a_killed_supply_leaves_the_eeprom_whole);
    RUN(short_samples_go_on_evenly_while_the_board_writes);
    RUN(a_board_is_busy_but_answers_while_it_writes);
}
