/* Commands: what is obeyed, what is refused, in which order the reasons come, and what is never answered. */
#include "bench.h"
#include "bytes.h"
#include "check.h"
#include "suites.h"

#include <string.h>

static void hello_is_answered_by_the_identity(void) {
    struct payload expected;
    bench_start();
    bench_send(MESSAGE_HELLO, NULL, 0);
    bench_run_ms(5);
    const struct heard *const answer = bench_last(MESSAGE_IDENTITY);
    message_encode_identity(&board.identity, &description, &expected);
    if (CHECK(answer != NULL)) {
        CHECK_EQUAL(PROTOCOL_VERSION, answer->version);
        CHECK_BYTES(payload_bytes(&expected), expected.length, answer->payload, answer->length);
        CHECK_EQUAL(39, answer->length);
    }
}

static void a_host_that_opens_a_silent_line_hears_the_answer_to_its_first_hello(void) {
    bench_start();
    bench_run_ms(100);
    bench_open_line();
    bench_send(MESSAGE_HELLO, NULL, 0);
    bench_run_ms(5);
    CHECK_EQUAL(1, bench_count(MESSAGE_IDENTITY));
}

static void arming_closes_the_contactor_with_the_drives_at_zero(void) {
    bench_start();
    bench_check_acknowledged(bench_arm(), MESSAGE_ARM);
    CHECK_EQUAL(STATE_ARMED, board.state);
    CHECK(hardware.contactor);
    CHECK(hardware.lamp);
    CHECK_EQUAL(0, hardware.duty[0]);
    bench_check_event(EVENT_ARMED, REASON_NONE, 0);
}

static void arming_needs_the_boot_id_of_this_start(void) {
    uint8_t payload[4];
    bench_start();
    put_u32(payload, BOOT_ID + 1u);
    bench_check_refused(bench_send(MESSAGE_ARM, payload, sizeof payload), MESSAGE_ARM, REFUSE_WRONG_BOOT_ID, 0);
    bench_check_safe();
}

static void arming_needs_every_input_closed(void) {
    bench_start();
    for (uint8_t inputs = 0; inputs < INPUTS_WATCHED; inputs++) {
        hardware.inputs = inputs;
        bench_run_ms(3);
        bench_check_refused(bench_arm(), MESSAGE_ARM, REFUSE_INPUT_OPEN, inputs);
        bench_check_safe();
    }
}

static void arming_twice_is_acknowledged_and_changes_nothing(void) {
    bench_start();
    bench_arm();
    bench_drive(0, 30000, 0);
    bench_run_alive_ms(400);
    const uint32_t duty = hardware.duty[0];
    CHECK(duty > 0);
    bench_forget();
    bench_check_acknowledged(bench_arm(), MESSAGE_ARM);
    bench_run_ms(5);
    CHECK_EQUAL(duty, hardware.duty[0]);
    CHECK_EQUAL(0, bench_count(MESSAGE_EVENT));
}

static void a_drive_is_refused_in_safe(void) {
    bench_start();
    bench_check_refused(bench_drive(0, 65536, 0), MESSAGE_DRIVE, REFUSE_NOT_ARMED, STATE_SAFE);
    bench_run_ms(100);
    bench_check_safe();
}

static void length_comes_before_range_and_range_before_state(void) {
    uint8_t payload[8] = {9, 0xFF, 0xFF, 0xFF, 0xFF, 0, 0, 0};
    bench_start();
    bench_check_refused(bench_send(MESSAGE_DRIVE, payload, 8), MESSAGE_DRIVE, REFUSE_WRONG_LENGTH, 8);
    bench_check_refused(bench_send(MESSAGE_DRIVE, payload, 7), MESSAGE_DRIVE, REFUSE_OUT_OF_RANGE, 1);
    payload[0] = 1;
    bench_check_refused(bench_send(MESSAGE_DRIVE, payload, 7), MESSAGE_DRIVE, REFUSE_OUT_OF_RANGE, 2);
    bench_check_refused(bench_drive(1, 65536, 0), MESSAGE_DRIVE, REFUSE_NOT_ARMED, STATE_SAFE);
}

static void the_boot_id_comes_before_the_inputs_and_before_the_state(void) {
    const uint8_t wrong[4] = {0};
    bench_start();
    hardware.inputs = 0;
    bench_run_ms(3);
    bench_check_refused(bench_send(MESSAGE_ARM, wrong, 4), MESSAGE_ARM, REFUSE_WRONG_BOOT_ID, 0);
    hardware.inputs = INPUTS_WATCHED;
    bench_run_ms(3);
    bench_arm();
    bench_check_refused(bench_send(MESSAGE_ARM, wrong, 4), MESSAGE_ARM, REFUSE_WRONG_BOOT_ID, 0);
    CHECK_EQUAL(STATE_ARMED, board.state);
}

static void the_contactor_comes_last(void) {
    bench_start();
    hardware.feedback = 1;
    hardware.inputs = INPUT_GUARD;
    bench_run_ms(3);
    bench_check_refused(bench_send_arm(), MESSAGE_ARM, REFUSE_INPUT_OPEN, INPUT_GUARD | INPUT_FEEDBACK);
    hardware.inputs = INPUTS_WATCHED;
    bench_run_ms(3);
    bench_check_refused(bench_send_arm(), MESSAGE_ARM, REFUSE_CONTACTOR, ALL_CLOSED);
    bench_check_safe();
}

static void locked_comes_behind_the_boot_id_and_before_everything_else(void) {
    const uint8_t wrong[4] = {0};
    bench_start();
    hardware.self_test.tried = TEST_CONVERTER;
    hardware.self_test.failed = TEST_CONVERTER;
    bench_send(MESSAGE_SELF_TEST, NULL, 0);
    bench_check_locked();
    hardware.inputs = 0;
    bench_run_ms(3);
    bench_check_refused(bench_send(MESSAGE_ARM, wrong, 4), MESSAGE_ARM, REFUSE_WRONG_BOOT_ID, 0);
    bench_check_refused(bench_send_arm(), MESSAGE_ARM, REFUSE_LOCKED, TEST_CONVERTER);
    bench_check_refused(bench_drive(0, 1, 0), MESSAGE_DRIVE, REFUSE_LOCKED, TEST_CONVERTER);
    bench_check_refused(bench_drive(0, 65537, 0), MESSAGE_DRIVE, REFUSE_OUT_OF_RANGE, 2);
    bench_check_refused(bench_dither(0, 1, 50), MESSAGE_DITHER, REFUSE_LOCKED, TEST_CONVERTER);
    bench_check_acknowledged(bench_make_safe(), MESSAGE_MAKE_SAFE);
    bench_check_locked();
}

static void a_drive_is_refused_while_the_contactor_is_proven(void) {
    bench_start();
    hardware.feedback = 0;
    bench_send_arm();
    CHECK_EQUAL(STATE_PROVING, board.state);
    bench_check_refused(bench_drive(0, 65536, 0), MESSAGE_DRIVE, REFUSE_NOT_ARMED, STATE_PROVING);
    bench_check_refused(bench_dither(0, 100, 100), MESSAGE_DITHER, REFUSE_NOT_ARMED, STATE_PROVING);
    CHECK_EQUAL(0, hardware.duty[0]);
}

static void what_needs_a_board_at_rest_is_refused_while_proving_and_armed(void) {
    const uint8_t byte = 7;
    bench_start();
    hardware.feedback = 0;
    bench_send_arm();
    bench_check_refused(bench_send(MESSAGE_SELF_TEST, NULL, 0), MESSAGE_SELF_TEST, REFUSE_NOT_SAFE, STATE_PROVING);
    hardware.feedback = AUTO_FEEDBACK;
    bench_run_ms(15);
    CHECK_EQUAL(STATE_ARMED, board.state);
    bench_check_refused(bench_send(MESSAGE_SELF_TEST, NULL, 0), MESSAGE_SELF_TEST, REFUSE_NOT_SAFE, STATE_ARMED);
    bench_check_refused(bench_blob_write(0, 0, &byte, 1), MESSAGE_BLOB_WRITE, REFUSE_NOT_SAFE, STATE_ARMED);
    bench_check_refused(bench_blob_commit(0, 1, 0), MESSAGE_BLOB_COMMIT, REFUSE_NOT_SAFE, STATE_ARMED);
    CHECK_EQUAL(0, store.writes);
}

static void a_hello_of_another_version_is_answered_whatever_it_carries(void) {
    const uint8_t byte = 4;
    bench_start();
    bench_forget();
    bench_send_version(9, MESSAGE_HELLO, &byte, 1);
    bench_run_ms(5);
    CHECK_EQUAL(1, bench_count(MESSAGE_IDENTITY));
    CHECK_EQUAL(1, heard_count);
}

static void a_hello_of_the_boards_version_that_carries_something_is_refused(void) {
    const uint8_t bytes[3] = {4, 5, 6};
    bench_start();
    bench_forget();
    bench_check_refused(bench_send(MESSAGE_HELLO, bytes, 3), MESSAGE_HELLO, REFUSE_WRONG_LENGTH, 3);
    CHECK_EQUAL(0, bench_count(MESSAGE_IDENTITY));
}

static void a_make_safe_of_any_length_is_obeyed_and_a_wrong_one_then_refused(void) {
    const uint8_t bytes[FRAME_PAYLOAD_MAX] = {7};
    static const uint8_t lengths[] = {1, 4, FRAME_PAYLOAD_MAX};
    for (size_t i = 0; i < sizeof lengths; i++) {
        bench_start();
        bench_arm();
        bench_drive(0, DUTY_FULL, 0);
        bench_run_ms(100);
        bench_forget();
        bench_check_refused(bench_send(MESSAGE_MAKE_SAFE, bytes, lengths[i]), MESSAGE_MAKE_SAFE, REFUSE_WRONG_LENGTH,
                            lengths[i]);
        bench_check_safe();
        bench_check_event(EVENT_MADE_SAFE, REASON_HOST_ASKED, 0);
        CHECK_EQUAL(0, bench_count(MESSAGE_ACKNOWLEDGE));
    }
}

static void a_make_safe_of_another_version_is_not_obeyed(void) {
    bench_start();
    bench_arm();
    bench_send_version(2, MESSAGE_MAKE_SAFE, NULL, 0);
    CHECK_EQUAL(STATE_ARMED, board.state);
}

static void an_unknown_type_is_refused_with_its_number(void) {
    bench_start();
    bench_check_refused(bench_send(0x7F, NULL, 0), 0x7F, REFUSE_UNKNOWN_TYPE, 0x7F);
    bench_check_refused(bench_send(0x00, NULL, 0), 0x00, REFUSE_UNKNOWN_TYPE, 0);
}

static void keep_alive_is_not_answered(void) {
    bench_start();
    bench_forget();
    bench_keep_alive();
    bench_run_ms(50);
    CHECK_EQUAL(0, heard_count);
}

static void a_foreign_hello_is_answered_with_the_boards_own_version(void) {
    bench_start();
    bench_forget();
    bench_send_version(2, MESSAGE_HELLO, NULL, 0);
    bench_run_ms(5);
    CHECK_EQUAL(1, heard_count);
    CHECK_EQUAL(MESSAGE_IDENTITY, heard[0].type);
    CHECK_EQUAL(PROTOCOL_VERSION, heard[0].version);
}

static void foreign_commands_are_neither_obeyed_nor_answered(void) {
    uint8_t boot_id[4];
    put_u32(boot_id, BOOT_ID);
    bench_start();
    bench_forget();
    bench_send_version(2, MESSAGE_ARM, boot_id, sizeof boot_id);
    bench_send_version(0, MESSAGE_ARM, boot_id, sizeof boot_id);
    bench_send_version(2, 0x7F, NULL, 0);
    bench_run_ms(5);
    bench_check_safe();
    CHECK_EQUAL(0, heard_count);
}

static void a_board_of_another_version_answers_hello_in_its_own(void) {
    bench_start();
    board_start(&board, &description, 7);
    bench_send_bytes((const uint8_t[]){0}, 1);
    bench_send(MESSAGE_HELLO, NULL, 0);
    bench_run_ms(5);
    const struct heard *const answer = bench_last(MESSAGE_IDENTITY);
    if (CHECK(answer != NULL)) {
        CHECK_EQUAL(7, answer->version);
    }
    bench_arm();
    bench_check_safe();
}

static void the_boards_own_frames_coming_back_are_not_answered(void) {
    const uint8_t any[12] = {0};
    bench_start();
    bench_forget();
    for (unsigned type = MESSAGE_FROM_BOARD; type <= 0xFF; type++) {
        bench_send((uint8_t)type, any, sizeof any);
    }
    bench_run_ms(50);
    CHECK_EQUAL(0, heard_count);
}

static void answers_come_within_fifty_milliseconds_under_full_streaming(void) {
    bench_start();
    bench_stream(2);
    for (unsigned i = 0; i < 50; i++) {
        bench_run_ms(7);
        bench_forget();
        const uint16_t sequence = bench_make_safe();
        bench_run_ms(10);
        const struct heard *const answer = bench_last(MESSAGE_ACKNOWLEDGE);
        if (CHECK(answer != NULL)) {
            CHECK_EQUAL(sequence, get_u16(answer->payload));
        }
    }
}

static void the_longest_answer_finds_room_beside_the_fastest_samples(void) {
    bench_start();
    bench_stream(2);
    bench_run_ms(100);
    for (unsigned i = 0; i < 100; i++) {
        bench_forget();
        bench_send(MESSAGE_HELLO, NULL, 0);
        bench_run_ms(12);
        CHECK_EQUAL(1, bench_count(MESSAGE_IDENTITY));
    }
}

void command_tests(void) {
    RUN(hello_is_answered_by_the_identity);
    RUN(a_host_that_opens_a_silent_line_hears_the_answer_to_its_first_hello);
    RUN(arming_closes_the_contactor_with_the_drives_at_zero);
    RUN(arming_needs_the_boot_id_of_this_start);
    RUN(arming_needs_every_input_closed);
    RUN(arming_twice_is_acknowledged_and_changes_nothing);
    RUN(a_drive_is_refused_in_safe);
    RUN(length_comes_before_range_and_range_before_state);
    RUN(the_boot_id_comes_before_the_inputs_and_before_the_state);
    RUN(the_contactor_comes_last);
    RUN(locked_comes_behind_the_boot_id_and_before_everything_else);
    RUN(a_drive_is_refused_while_the_contactor_is_proven);
    RUN(what_needs_a_board_at_rest_is_refused_while_proving_and_armed);
    RUN(a_hello_of_another_version_is_answered_whatever_it_carries);
    RUN(a_hello_of_the_boards_version_that_carries_something_is_refused);
    RUN(a_make_safe_of_any_length_is_obeyed_and_a_wrong_one_then_refused);
    RUN(a_make_safe_of_another_version_is_not_obeyed);
    RUN(an_unknown_type_is_refused_with_its_number);
    RUN(keep_alive_is_not_answered);
    RUN(a_foreign_hello_is_answered_with_the_boards_own_version);
    RUN(foreign_commands_are_neither_obeyed_nor_answered);
    RUN(a_board_of_another_version_answers_hello_in_its_own);
    RUN(the_boards_own_frames_coming_back_are_not_answered);
    RUN(answers_come_within_fifty_milliseconds_under_full_streaming);
    RUN(the_longest_answer_finds_room_beside_the_fastest_samples);
}
