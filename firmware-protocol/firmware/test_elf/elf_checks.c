/* What the tests of the ELF share. */
#include <stddef.h>

#include "bytes.h"
#include "check.h"
#include "elf_suites.h"

bool start(void) {
    return CHECK(emulated_start(NULL, EXCHANGE_MS));
}

void quit(void) {
    CHECK_EQUAL(0, emulated_quit());
}

void armed_at_half(void) {
    host_keep_alive(true);
    CHECK(host_arm());
    CHECK(host_drive(0, 32768));
    emulated_run_ms(300);
    CHECK_EQUAL(32768, pins.duty[0]);
    CHECK_EQUAL(1, pins.contactor);
}

const struct board_frame *expect_event(uint8_t kind, unsigned within_ms) {
    const struct board_frame *event = host_wait(MESSAGE_EVENT, within_ms);
    while (event != NULL && event->payload[6] != kind) {
        event = host_wait(MESSAGE_EVENT, within_ms);
    }
    CHECK(event != NULL);
    return event;
}

int32_t expect_made_safe(uint8_t reason) {
    const struct board_frame *const event = expect_event(EVENT_MADE_SAFE, 100);
    if (event == NULL) {
        return 0;
    }
    CHECK_EQUAL(reason, event->payload[7]);
    return (int32_t)get_u32(event->payload + 8);
}

unsigned ms_until_safe(unsigned most_ms) {
    const unsigned long long began = pins.us;
    while (pins.contactor == 1 && pins.us - began < most_ms * 1000ull) {
        emulated_step();
    }
    return (unsigned)((pins.us - began) / 1000u);
}

void check_outputs_safe(void) {
    CHECK_EQUAL(0, pins.duty[0]);
    CHECK_EQUAL(0, pins.duty[1]);
    CHECK_EQUAL(0, pins.contactor);
}

void check_reading(unsigned millivolts, uint32_t reading) {
    CHECK_EQUAL(millivolts * 1024u / 5000u * 64u, reading);
}
