/* The ELF as it goes onto the chip, in the emulator: what only the real hardware layer can get wrong. */
#include <stdio.h>
#include <string.h>

#include "bytes.h"
#include "check.h"
#include "emulated.h"

static const char *emulator;
static const char *elf;

static bool start(void) {
    return CHECK(emulated_start(emulator, elf));
}

static void quit(void) {
    CHECK_EQUAL(0, emulated_quit());
}

static void check_event(uint8_t kind, uint8_t reason, unsigned within_ms) {
    const struct board_frame *event = host_wait(MESSAGE_EVENT, within_ms);
    while (event != NULL && event->payload[6] != kind) {
        event = host_wait(MESSAGE_EVENT, within_ms);
    }
    if (CHECK(event != NULL)) {
        CHECK_EQUAL(reason, event->payload[7]);
    }
}

static uint32_t event_detail(uint8_t kind) {
    const struct board_frame *event = host_wait(MESSAGE_EVENT, 500);
    while (event != NULL && event->payload[6] != kind) {
        event = host_wait(MESSAGE_EVENT, 500);
    }
    return CHECK(event != NULL) ? get_u32(event->payload + 8) : 0;
}

/* A left-justified reading of the ten-bit converter; one step more or less is the converter's own. */
static void check_reading(unsigned millivolts, uint32_t reading) {
    const uint32_t exact = millivolts * 65536u / 5000u;
    CHECK(reading + 128u > exact && reading < exact + 128u);
    CHECK_EQUAL(0, reading % 64u);
}

static void armed_at_half(void) {
    CHECK(host_arm());
    host_keep_alive(true);
    CHECK(host_drive(32768, 0));
    emulated_run_ms(300);
    CHECK_EQUAL(32768, pins.duty);
    CHECK_EQUAL(1, pins.contactor);
}

static void the_identity_is_the_boards(void) {
    if (!start()) {
        return;
    }
    const struct board_frame *const identity = host_hello();
    if (CHECK(identity != NULL)) {
        const uint8_t *const payload = identity->payload;
        const uint8_t no_id[8] = {0};
        CHECK_EQUAL(44, identity->length);
        CHECK_BYTES(no_id, 8, payload, 8);
        CHECK_EQUAL(0, payload[8]);
        CHECK_EQUAL(1, payload[9]);
        CHECK_EQUAL(RESET_POWER_ON, payload[15]);
        CHECK_EQUAL(1, payload[16]);
        CHECK_EQUAL(1, payload[17]);
        CHECK_EQUAL(4, payload[18]);
        CHECK_EQUAL(2000000, get_u32(payload + 19));
        CHECK_EQUAL(7812, get_u16(payload + 23));
        CHECK_EQUAL(131, get_u16(payload + 27));
        CHECK_EQUAL(750, get_u16(payload + 29));
        CHECK(memcmp(payload + 36, "avr328\0\0", 8) == 0);
    }
    quit();
}

static void the_lost_link_stops_the_pump_within_a_second_of_board_time(void) {
    if (!start()) {
        return;
    }
    armed_at_half();
    host_keep_alive(false);
    CHECK(host_drive(32768, 0));
    const unsigned long long last = pins.us;
    while (pins.contactor == 1 && pins.us - last < 3000000u) {
        emulated_run_ms(EXCHANGE_MS);
    }
    const unsigned long long after_ms = (pins.us - last) / 1000u;
    CHECK(after_ms >= 700 && after_ms <= 760);
    CHECK_EQUAL(0, pins.duty);
    CHECK_EQUAL(0, pins.contactor);
    check_event(EVENT_MADE_SAFE, REASON_LINK_LOST, 100);
    emulated_run_ms(1000);
    CHECK_EQUAL(0, pins.duty);
    quit();
}

static void open_inputs_stop_the_pump_within_twenty_milliseconds(void) {
    if (!start()) {
        return;
    }
    armed_at_half();
    plant.emergency_stop = false;
    emulated_run_ms(20);
    CHECK_EQUAL(0, pins.duty);
    CHECK_EQUAL(0, pins.contactor);
    check_event(EVENT_MADE_SAFE, REASON_EMERGENCY_STOP, 100);
    plant.emergency_stop = true;
    emulated_run_ms(20);
    armed_at_half();
    plant.guard = false;
    emulated_run_ms(20);
    CHECK_EQUAL(0, pins.duty);
    CHECK_EQUAL(0, pins.contactor);
    check_event(EVENT_MADE_SAFE, REASON_GUARD_OPEN, 100);
    quit();
}

static void over_current_stops_the_pump_after_its_time(void) {
    if (!start()) {
        return;
    }
    armed_at_half();
    host_forget();
    plant.millivolts[1] = 4000; /* 52428 of 65536 */
    emulated_run_ms(45);
    CHECK_EQUAL(32768, pins.duty);
    emulated_run_ms(30);
    CHECK_EQUAL(0, pins.duty);
    check_reading(4000, event_detail(EVENT_MADE_SAFE));
    quit();
}

static void the_applied_duty_is_what_the_pin_gets(void) {
    static const uint32_t duties[] = {100, 127, 128, 256, 20000, 32768, 65000, 65407, 65408, 65535, 65536, 300, 0};
    if (!start()) {
        return;
    }
    CHECK(host_arm());
    host_keep_alive(true);
    CHECK(host_stream(20));
    for (size_t i = 0; i < sizeof duties / sizeof *duties; i++) {
        CHECK(host_drive(duties[i], 0));
        emulated_run_ms(600);
        host_forget();
        const struct board_frame *const sample = host_wait(MESSAGE_SAMPLE, 200);
        const uint32_t rounded = (duties[i] + 128u) / 256u * 256u;
        CHECK_EQUAL(rounded, pins.duty);
        if (CHECK(sample != NULL)) {
            CHECK_EQUAL(rounded, get_u32(sample->payload + 46));
        }
    }
    quit();
}

static void each_analogue_channel_is_its_own_pin(void) {
    static const unsigned millivolts[4] = {100, 1300, 2500, 4900};
    if (!start()) {
        return;
    }
    memcpy(plant.millivolts, millivolts, sizeof millivolts);
    CHECK(host_stream(50));
    emulated_run_ms(200);
    host_forget();
    const struct board_frame *const sample = host_wait(MESSAGE_SAMPLE, 200);
    if (CHECK(sample != NULL)) {
        for (unsigned i = 0; i < 4; i++) {
            const uint16_t mean = get_u16(sample->payload + 20 + 6 * i);
            check_reading(millivolts[i], mean);
            CHECK_EQUAL(mean, get_u16(sample->payload + 22 + 6 * i));
            CHECK_EQUAL(mean, get_u16(sample->payload + 24 + 6 * i));
        }
        const uint16_t conversions = get_u16(sample->payload + 44);
        CHECK(conversions >= 105 && conversions <= 121);
    }
    quit();
}

/* Board time of the last edge against the plant's, over many turns of the 16-bit timer. */
static void check_edges(double every_us, unsigned ms, uint32_t *counted) {
    double least = 1e18;
    double most = -1e18;

    plant.edge_every_us = every_us;
    for (unsigned done = 0; done < ms; done += 50) {
        emulated_run_ms(30);
        plant.edge_every_us = 0.0;
        emulated_run_ms(20);
        host_forget();
        const struct board_frame *const sample = host_wait(MESSAGE_SAMPLE, 100);
        plant.edge_every_us = every_us;
        if (!CHECK(sample != NULL)) {
            return;
        }
        CHECK_EQUAL(edges_sent, get_u32(sample->payload + 4));
        const double offset_us = get_u32(sample->payload + 8) / 2.0 - last_edge_us;
        least = offset_us < least ? offset_us : least;
        most = offset_us > most ? offset_us : most;
        *counted = get_u32(sample->payload + 4);
    }
    plant.edge_every_us = 0.0;
    CHECK(most - least <= 1.0);
}

static void every_edge_is_counted_and_timed_over_many_turns_of_the_timer(void) {
    uint32_t counted = 0;
    if (!start()) {
        return;
    }
    CHECK(host_stream(10));
    check_edges(1234.567, 3000, &counted);
    CHECK(counted > 1000);
    quit();
}

static void ten_thousand_edges_a_second_are_all_counted_beside_full_traffic(void) {
    uint32_t counted = 0;
    if (!start()) {
        return;
    }
    CHECK(host_stream(3));
    check_edges(100.0, 1000, &counted);
    CHECK(counted > 5000);
    quit();
}

static void a_hung_program_is_reset_by_the_watchdog_into_safe(void) {
    if (!start()) {
        return;
    }
    armed_at_half();
    host_forget();
    emulated_command("hang");
    const unsigned long long hung_at = pins.us;
    emulated_run_ms(100);
    CHECK_EQUAL(32768, pins.duty);
    while (pins.duty != 0 && pins.us - hung_at < 2000000u) {
        emulated_run_ms(EXCHANGE_MS);
    }
    CHECK((pins.us - hung_at) / 1000u <= 300);
    CHECK_EQUAL(0, pins.contactor);
    CHECK_EQUAL(RESET_WATCHDOG, event_detail(EVENT_STARTED));
    emulated_run_ms(500);
    CHECK_EQUAL(0, pins.duty);
    quit();
}

static void every_reset_starts_safe_with_its_cause_and_a_new_boot_id(void) {
    static const struct {
        const char *command;
        uint8_t cause;
    } resets[] = {{"reset", RESET_EXTERNAL}, {"brown-out", RESET_BROWN_OUT}};
    if (!start()) {
        return;
    }
    for (size_t i = 0; i < sizeof resets / sizeof *resets; i++) {
        const struct board_frame *const before = host_hello();
        const uint32_t old_id = CHECK(before != NULL) ? get_u32(before->payload + 11) : 0;
        armed_at_half();
        host_forget();
        emulated_command(resets[i].command);
        emulated_run_ms(EXCHANGE_MS);
        CHECK_EQUAL(0, pins.duty);
        CHECK_EQUAL(0, pins.contactor);
        CHECK_EQUAL(resets[i].cause, event_detail(EVENT_STARTED));
        CHECK(host_send(MESSAGE_KEEP_ALIVE, NULL, 0) != 0);
        const struct board_frame *const after = host_hello();
        if (CHECK(after != NULL)) {
            CHECK(get_u32(after->payload + 11) != old_id);
            CHECK_EQUAL(resets[i].cause, after->payload[15]);
        }
    }
    quit();
}

static void a_corrupting_line_is_never_obeyed(void) {
    if (!start()) {
        return;
    }
    emulated_command("corrupt-rx 3");
    for (unsigned i = 0; i < 8; i++) {
        CHECK(!host_arm());
        CHECK_EQUAL(0, pins.contactor);
    }
    emulated_command("corrupt-rx 0");
    emulated_run_ms(20);
    host_send(MESSAGE_KEEP_ALIVE, NULL, 0);
    CHECK(host_arm());
    CHECK_EQUAL(1, pins.contactor);
    emulated_command("corrupt-tx 5");
    bad_frames = 0;
    emulated_run_ms(5);
    CHECK(host_hello() == NULL);
    CHECK(bad_frames > 0);
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
    CHECK_EQUAL(32768, pins.duty);
    emulated_run_ms(800);
    CHECK_EQUAL(0, pins.duty);
    check_event(EVENT_MADE_SAFE, REASON_LINK_LOST, 100);
    quit();
}

static void unplugging_hangs_up_and_plugging_gives_a_new_line(void) {
    if (!start()) {
        return;
    }
    armed_at_half();
    emulated_command("unplug");
    emulated_run_ms(10);
    CHECK(host_hung_up());
    emulated_run_ms(1000);
    CHECK_EQUAL(0, pins.duty);
    emulated_command("plug");
    emulated_run_ms(10);
    host_open();
    CHECK(host_hello() != NULL);
    quit();
}

static void a_host_may_leave_and_come_back_and_need_not_read(void) {
    if (!start()) {
        return;
    }
    CHECK(host_stream(5));
    for (unsigned i = 0; i < 5; i++) {
        host_close();
        emulated_run_ms(1000);
        host_open();
        CHECK(host_hello() != NULL);
    }
    CHECK_EQUAL(0, emulated_terminate());
}

int main(int count, char **words) {
    if (count != 3) {
        fputs("usage: elf-tests EMULATOR ELF\n", stderr);
        return 2;
    }
    emulator = words[1];
    elf = words[2];
    RUN(the_identity_is_the_boards);
    RUN(the_lost_link_stops_the_pump_within_a_second_of_board_time);
    RUN(open_inputs_stop_the_pump_within_twenty_milliseconds);
    RUN(over_current_stops_the_pump_after_its_time);
    RUN(the_applied_duty_is_what_the_pin_gets);
    RUN(each_analogue_channel_is_its_own_pin);
    RUN(every_edge_is_counted_and_timed_over_many_turns_of_the_timer);
    RUN(ten_thousand_edges_a_second_are_all_counted_beside_full_traffic);
    RUN(a_hung_program_is_reset_by_the_watchdog_into_safe);
    RUN(every_reset_starts_safe_with_its_cause_and_a_new_boot_id);
    RUN(a_corrupting_line_is_never_obeyed);
    RUN(a_frozen_chip_makes_itself_safe_once_it_runs_again);
    RUN(unplugging_hangs_up_and_plugging_gives_a_new_line);
    RUN(a_host_may_leave_and_come_back_and_need_not_read);
    return check_summary();
}
