/* The loops that the board watches. */
#include <stddef.h>

#include "bytes.h"
#include "check.h"
#include "elf_suites.h"

static const struct {
    const char *name;
    unsigned bit;
    uint8_t reason;
} loops[] = {{"emergency stop", INPUT_EMERGENCY_STOP, REASON_EMERGENCY_STOP},
             {"guard", INPUT_GUARD, REASON_GUARD_OPEN},
             {"level", INPUT_LEVEL, REASON_LEVEL_LOW},
             {"override", INPUT_OVERRIDE, REASON_OVERRIDE_IN}};

#define LOOPS (sizeof loops / sizeof *loops)

static void each_open_input_stops_the_pump_within_twenty_milliseconds(void) {
    if (!start()) {
        return;
    }
    for (size_t i = 0; i < LOOPS; i++) {
        check_context(loops[i].name);
        armed_at_half();
        plant.closed = INPUTS_WATCHED & ~loops[i].bit;
        CHECK(ms_until_safe(100) <= 20);
        check_outputs_safe();
        CHECK_EQUAL(0, expect_made_safe(loops[i].reason));
        plant.closed = INPUTS_WATCHED;
        emulated_run_ms(50);
        check_outputs_safe();
    }
    quit();
}

static void each_open_input_keeps_the_board_from_arming_and_is_named(void) {
    uint8_t payload[4];
    if (!start()) {
        return;
    }
    put_u32(payload, host_boot_id());
    CHECK(host_stream(10, STREAM_SAMPLES));
    for (size_t i = 0; i < LOOPS; i++) {
        check_context(loops[i].name);
        plant.closed = INPUTS_WATCHED & ~loops[i].bit;
        emulated_run_ms(50);
        const struct refusal refusal = host_refused(MESSAGE_ARM, payload, sizeof payload);
        CHECK_EQUAL(REFUSE_INPUT_OPEN, refusal.reason);
        CHECK_EQUAL(plant.closed, refusal.detail);
        CHECK_EQUAL(0, pins.contactor);
        const struct board_frame *const sample = host_wait(MESSAGE_SAMPLE, 100);
        if (CHECK(sample != NULL)) {
            CHECK_EQUAL(plant.closed, sample->payload[55]);
        }
    }
    quit();
}

static void the_lost_link_stops_the_pump_within_a_second_of_board_time(void) {
    if (!start()) {
        return;
    }
    armed_at_half();
    host_keep_alive(false);
    CHECK(host_drive(0, 32768));
    const unsigned after_ms = ms_until_safe(3000);
    CHECK(after_ms >= 700 && after_ms <= 770);
    check_outputs_safe();
    CHECK_EQUAL(0, expect_made_safe(REASON_LINK_LOST));
    emulated_run_ms(1000);
    check_outputs_safe();
    quit();
}

void input_tests(void) {
    RUN(each_open_input_stops_the_pump_within_twenty_milliseconds);
    RUN(each_open_input_keeps_the_board_from_arming_and_is_named);
    RUN(the_lost_link_stops_the_pump_within_a_second_of_board_time);
}
