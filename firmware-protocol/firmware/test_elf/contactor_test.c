/* The proof of the contactor on the real pins. */
#include <stddef.h>

#include "bytes.h"
#include "check.h"
#include "elf_suites.h"

static void the_contactor_is_proven_before_a_drive_may_move(void) {
    uint8_t payload[7];
    put_u16(put_u32(put_u8(payload, 0), 32768), 0);
    if (!start()) {
        return;
    }
    host_keep_alive(true);
    emulated_command("feedback 0");
    CHECK(host_ask_to_arm());
    CHECK_EQUAL(1, pins.contactor);
    const struct refusal refusal = host_refused(MESSAGE_DRIVE, payload, sizeof payload);
    CHECK_EQUAL(REFUSE_NOT_ARMED, refusal.reason);
    CHECK_EQUAL(STATE_PROVING, refusal.detail);
    CHECK_EQUAL(0, pins.duty[0]);
    emulated_command("feedback auto");
    const struct board_frame *const event = host_wait(MESSAGE_EVENT, 100);
    if (CHECK(event != NULL)) {
        CHECK_EQUAL(EVENT_ARMED, event->payload[6]);
    }
    CHECK(host_drive(0, 32768));
    quit();
}

static void a_contactor_that_is_stuck_open_is_let_go_after_two_hundred_milliseconds(void) {
    if (!start()) {
        return;
    }
    host_keep_alive(true);
    emulated_command("feedback 0");
    CHECK(host_ask_to_arm());
    const unsigned after_ms = ms_until_safe(1000);
    CHECK(after_ms >= 180 && after_ms <= 220);
    CHECK_EQUAL(CONTACTOR_DID_NOT_CLOSE, expect_made_safe(REASON_CONTACTOR));
    check_outputs_safe();
    emulated_command("feedback auto");
    emulated_run_ms(20);
    CHECK(host_arm());
    quit();
}

static void a_contactor_that_opens_by_itself_stops_the_pump(void) {
    if (!start()) {
        return;
    }
    armed_at_half();
    emulated_command("feedback 0");
    CHECK(ms_until_safe(100) <= 20);
    CHECK_EQUAL(CONTACTOR_OPENED, expect_made_safe(REASON_CONTACTOR));
    check_outputs_safe();
    quit();
}

static void a_welded_contactor_locks_the_board_until_a_reset(void) {
    uint8_t payload[4];
    if (!start()) {
        return;
    }
    armed_at_half();
    emulated_command("feedback 1");
    CHECK(host_acknowledged(MESSAGE_MAKE_SAFE, NULL, 0));
    const struct board_frame *const event = expect_event(EVENT_LOCKED, 400);
    if (event != NULL) {
        CHECK_EQUAL(REASON_HARDWARE, event->payload[7]);
        CHECK_EQUAL(TEST_FEEDBACK, get_u32(event->payload + 8));
    }
    put_u32(payload, host_boot_id());
    struct refusal refusal = host_refused(MESSAGE_ARM, payload, sizeof payload);
    CHECK_EQUAL(REFUSE_LOCKED, refusal.reason);
    CHECK_EQUAL(TEST_FEEDBACK, refusal.detail);
    check_outputs_safe();

    emulated_command("reset");
    emulated_run_ms(100);
    CHECK(host_hello() != NULL);
    put_u32(payload, host_boot_id());
    refusal = host_refused(MESSAGE_ARM, payload, sizeof payload);
    /* It has let go of nothing since the reset, so nothing locks it; but it does not arm either. */
    CHECK_EQUAL(REFUSE_CONTACTOR, refusal.reason);
    emulated_command("feedback auto");
    emulated_command("reset");
    emulated_run_ms(100);
    CHECK(host_hello() != NULL);
    armed_at_half();
    quit();
}

void contactor_tests(void) {
    RUN(the_contactor_is_proven_before_a_drive_may_move);
    RUN(a_contactor_that_is_stuck_open_is_let_go_after_two_hundred_milliseconds);
    RUN(a_contactor_that_opens_by_itself_stops_the_pump);
    RUN(a_welded_contactor_locks_the_board_until_a_reset);
}
