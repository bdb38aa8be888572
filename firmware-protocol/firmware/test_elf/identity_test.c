/* What the board says of itself, and its self-test. */
#include <stddef.h>

#include "bytes.h"
#include "check.h"
#include "elf_suites.h"

static void the_identity_is_the_boards(void) {
    static const uint8_t tail[] = {ROLE_VOLTS, ROLE_AMPS, ROLE_PRESSURE, ROLE_TEMPERATURE, 'a', 'v', 'r', '3', '2',
                                   '8',        0,         0};
    static const uint8_t no_id[UNIQUE_ID_BYTES] = {0};
    if (!start()) {
        return;
    }
    const struct board_frame *const identity = host_hello();
    if (CHECK(identity != NULL)) {
        const uint8_t *const payload = identity->payload;
        CHECK_EQUAL(IDENTITY_LENGTH, identity->length);
        CHECK_BYTES(no_id, sizeof no_id, payload, sizeof no_id);
        CHECK_EQUAL(1, payload[8]);
        CHECK_EQUAL(0, payload[9]);
        CHECK_EQUAL(0, payload[10]);
        CHECK_EQUAL(RESET_POWER_ON, payload[15]);
        CHECK_EQUAL(2, payload[16]);
        CHECK_EQUAL(2, payload[17]);
        CHECK_EQUAL(4, payload[18]);
        CHECK_EQUAL(2000000, get_u32(payload + 19));
        CHECK_EQUAL(7812, get_u16(payload + 23));
        CHECK_EQUAL(7812, get_u16(payload + 25));
        CHECK_BYTES(tail, sizeof tail, payload + 27, sizeof tail);
    }
    quit();
}

static void the_limits_are_the_boards(void) {
    static const uint32_t expected[LIMITS] = {49152, 50, 2400000, 58982, 100, 52429, 5000, 0, 5000, 55706, 50, 750};
    if (!start()) {
        return;
    }
    const struct board_frame *const limits = host_ask(MESSAGE_READ_LIMITS, NULL, 0, MESSAGE_LIMITS);
    if (CHECK(limits != NULL)) {
        for (unsigned i = 0; i < LIMITS; i++) {
            CHECK_EQUAL(expected[i], get_u32(limits->payload + 4u * i));
        }
    }
    quit();
}

static void the_self_test_tries_memory_converter_and_feedback_while_the_meters_run(void) {
    if (!start()) {
        return;
    }
    plant.edge_every_us[0] = 100.0;
    plant.edge_every_us[1] = 170.0;
    emulated_run_ms(50);
    const struct board_frame *const result = host_ask(MESSAGE_SELF_TEST, NULL, 0, MESSAGE_SELF_TEST_RESULT);
    if (CHECK(result != NULL)) {
        const uint16_t tried = get_u16(result->payload);
        CHECK_EQUAL(0, get_u16(result->payload + 2));
        CHECK((tried & TEST_WORKING_MEMORY) != 0);
        CHECK((tried & TEST_CONVERTER) != 0);
        CHECK((tried & TEST_FEEDBACK) != 0);
        CHECK_EQUAL(0, tried & (TEST_PROGRAM_MEMORY | TEST_CLOCK));
    }
    plant.edge_every_us[0] = 0.0;
    plant.edge_every_us[1] = 0.0;
    armed_at_half();
    CHECK_EQUAL(REFUSE_NOT_SAFE, host_refused(MESSAGE_SELF_TEST, NULL, 0).reason);
    quit();
}

void identity_tests(void) {
    RUN(the_identity_is_the_boards);
    RUN(the_limits_are_the_boards);
    RUN(the_self_test_tries_memory_converter_and_feedback_while_the_meters_run);
}
