/* Resets, the watchdog, and a chip that stood still. */
#include <stddef.h>

#include "bytes.h"
#include "check.h"
#include "elf_suites.h"

static void a_hung_program_is_reset_by_the_watchdog_into_safe(void) {
    if (!start()) {
        return;
    }
    armed_at_half();
    host_forget();
    emulated_command("hang");
    const unsigned long long hung_at = pins.us;
    emulated_run_ms(100);
    CHECK_EQUAL(32768, pins.duty[0]);
    while (pins.duty[0] != 0 && pins.us - hung_at < 2000000u) {
        emulated_step();
    }
    CHECK((pins.us - hung_at) / 1000u <= 300);
    check_outputs_safe();
    const struct board_frame *const event = expect_event(EVENT_STARTED, 500);
    if (event != NULL) {
        CHECK_EQUAL(REASON_RESET, event->payload[7]);
        CHECK_EQUAL(RESET_WATCHDOG, get_u32(event->payload + 8));
    }
    emulated_run_ms(500);
    check_outputs_safe();
    quit();
}

static void every_reset_while_driving_starts_safe_with_its_cause_and_a_new_boot_id(void) {
    static const struct {
        const char *command;
        uint8_t cause;
    } resets[] = {{"reset", RESET_EXTERNAL}, {"brown-out", RESET_BROWN_OUT}, {"restart", RESET_WATCHDOG}};
    if (!start()) {
        return;
    }
    for (size_t i = 0; i < sizeof resets / sizeof *resets; i++) {
        check_context(resets[i].command);
        const uint32_t old_id = host_boot_id();
        armed_at_half();
        CHECK(host_drive(1, 20000));
        CHECK(host_stream(10, STREAM_SAMPLES));
        emulated_run_ms(200);
        host_forget();
        emulated_command(resets[i].command);
        emulated_step();
        check_outputs_safe();
        const struct board_frame *const event = expect_event(EVENT_STARTED, 200);
        if (event != NULL) {
            CHECK_EQUAL(1, get_u16(event->payload));
            CHECK_EQUAL(resets[i].cause, get_u32(event->payload + 8));
            CHECK(get_u32(event->payload + 2) - (uint32_t)TICKS_AT_START < 100000u);
        }
        const struct board_frame *const after = host_hello();
        if (CHECK(after != NULL)) {
            CHECK(host_boot_id() != old_id);
            CHECK_EQUAL(resets[i].cause, after->payload[15]);
        }
        CHECK(host_wait(MESSAGE_SAMPLE, 100) == NULL);
        check_outputs_safe();
    }
    quit();
}

static void a_frozen_chip_makes_itself_safe_once_it_runs_again(void) {
    if (!start()) {
        return;
    }
    armed_at_half();
    host_keep_alive(false);
    emulated_run_ms(10);
    const unsigned long long frozen_at = pins.us;
    emulated_command("freeze 2000");
    emulated_run_ms(2000);
    CHECK_EQUAL(2000000u, pins.us - frozen_at);
    CHECK_EQUAL(32768, pins.duty[0]);
    emulated_run_ms(800);
    check_outputs_safe();
    expect_made_safe(REASON_LINK_LOST);
    quit();
}

void reset_tests(void) {
    RUN(a_hung_program_is_reset_by_the_watchdog_into_safe);
    RUN(every_reset_while_driving_starts_safe_with_its_cause_and_a_new_boot_id);
    RUN(a_frozen_chip_makes_itself_safe_once_it_runs_again);
}
