/* The two drives, from the command to the compare register of their timers. */
#include <stddef.h>

#include "bytes.h"
#include "check.h"
#include "elf_suites.h"

#define SAMPLE_APPLIED_AT 46u

static void the_applied_duty_is_what_each_pin_gets(void) {
    static const uint32_t duties[] = {100, 127, 128, 256, 20000, 32768, 65000, 65407, 65408, 65535, 65536, 300, 0};
    if (!start()) {
        return;
    }
    host_keep_alive(true);
    CHECK(host_arm());
    CHECK(host_stream(20, STREAM_SAMPLES));
    for (uint8_t channel = 0; channel < DRIVES_MAX; channel++) {
        for (size_t i = 0; i < sizeof duties / sizeof *duties; i++) {
            CHECK(host_drive(channel, duties[i]));
            emulated_run_ms(600);
            host_forget();
            const struct board_frame *const sample = host_wait(MESSAGE_SAMPLE, 200);
            const uint32_t rounded = (duties[i] + 128u) / 256u * 256u;
            CHECK_EQUAL(rounded, pins.duty[channel]);
            CHECK_EQUAL(0, pins.duty[1u - channel]);
            if (CHECK(sample != NULL)) {
                CHECK_EQUAL(rounded, get_u32(sample->payload + SAMPLE_APPLIED_AT + 4u * channel));
            }
        }
    }
    quit();
}

static bool host_dither(uint8_t channel, uint16_t amplitude, uint16_t hz) {
    uint8_t payload[5];
    put_u16(put_u16(put_u8(payload, channel), amplitude), hz);
    return host_acknowledged(MESSAGE_DITHER, payload, sizeof payload);
}

/* Looks at the valve's pin every millisecond for a second and counts its turns between the two levels of the dither. */
static unsigned count_turns(unsigned long low, unsigned long high) {
    unsigned turns = 0;
    unsigned strays = 0;
    unsigned long before = pins.duty[1];
    for (unsigned ms = 0; ms < 1000; ms++) {
        emulated_step();
        if (pins.duty[1] != before) {
            turns++;
            before = pins.duty[1];
        }
        if (pins.duty[1] != low && pins.duty[1] != high) {
            strays++;
        }
        CHECK_EQUAL(0, pins.duty[0]);
    }
    CHECK_EQUAL(0, strays);
    return turns;
}

static void the_valve_gets_its_dither_around_the_applied_duty(void) {
    if (!CHECK(emulated_start(NULL, 1))) {
        return;
    }
    host_keep_alive(true);
    CHECK(host_arm());
    CHECK(host_drive(1, 32768));
    CHECK(host_dither(1, 4096, 100));
    emulated_run_ms(400);
    /* 100 Hz turn 200 times a second. */
    const unsigned turns = count_turns(28672, 36864);
    CHECK(turns >= 199 && turns <= 201);
    CHECK(host_stream(10, STREAM_SAMPLES));
    const struct board_frame *const sample = host_wait(MESSAGE_SAMPLE, 200);
    if (CHECK(sample != NULL)) {
        CHECK_EQUAL(32768, get_u32(sample->payload + SAMPLE_APPLIED_AT + 4u));
    }
    CHECK(host_acknowledged(MESSAGE_MAKE_SAFE, NULL, 0));
    emulated_run_ms(20);
    check_outputs_safe();
    CHECK(host_arm());
    CHECK(host_drive(1, 32768));
    emulated_run_ms(400);
    CHECK_EQUAL(0, count_turns(32768, 32768));
    quit();
}

static void dither_is_held_within_nothing_and_fully_on(void) {
    if (!CHECK(emulated_start(NULL, 1))) {
        return;
    }
    host_keep_alive(true);
    CHECK(host_arm());
    CHECK(host_dither(1, 8192, 250));
    emulated_run_ms(50);
    CHECK_EQUAL(0, count_turns(0, 0));
    CHECK(host_drive(1, 4096));
    emulated_run_ms(100);
    CHECK(count_turns(0, 12288) >= 495);
    CHECK(host_drive(1, 65536));
    emulated_run_ms(600);
    CHECK(count_turns(57344, 65536) >= 495);
    quit();
}

void drive_tests(void) {
    RUN(the_applied_duty_is_what_each_pin_gets);
    RUN(the_valve_gets_its_dither_around_the_applied_duty);
    RUN(dither_is_held_within_nothing_and_fully_on);
}
