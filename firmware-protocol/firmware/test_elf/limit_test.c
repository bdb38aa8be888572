/* The limits that the board keeps by itself, each from the voltage at a pin to the stopped pump. */
#include <stddef.h>

#include "check.h"
#include "elf_suites.h"

enum { VOLTS_PIN, AMPS_PIN, PRESSURE_PIN };

/* The condition began now: driving until its time is over, safe 20 ms later at the latest. */
static void check_stops_after(unsigned ms) {
    const unsigned after_ms = ms_until_safe(ms + 1000);
    CHECK(after_ms >= ms);
    CHECK(after_ms <= ms + 20 + EXCHANGE_MS);
    check_outputs_safe();
}

static void check_reading_stops(unsigned pin, unsigned millivolts, unsigned ms, uint8_t reason) {
    if (!start()) {
        return;
    }
    armed_at_half();
    host_forget();
    plant.millivolts[pin] = millivolts;
    check_stops_after(ms);
    check_reading(millivolts, (uint32_t)expect_made_safe(reason));
    quit();
}

static void check_reading_goes_on(unsigned pin, unsigned millivolts) {
    if (!start()) {
        return;
    }
    armed_at_half();
    plant.millivolts[pin] = millivolts;
    CHECK_EQUAL(1000, ms_until_safe(1000));
    CHECK_EQUAL(32768, pins.duty[0]);
    quit();
}

static void over_current_stops_the_pump_after_its_time(void) {
    check_reading_stops(AMPS_PIN, 4000, 50, REASON_OVER_CURRENT);
    check_reading_goes_on(AMPS_PIN, 3750);
}

static void over_pressure_stops_the_pump_after_its_time(void) {
    check_reading_stops(PRESSURE_PIN, 4600, 100, REASON_OVER_PRESSURE);
}

static void over_voltage_stops_the_pump_after_its_time(void) {
    check_reading_stops(VOLTS_PIN, 4400, 50, REASON_OVER_VOLTAGE);
    check_reading_goes_on(VOLTS_PIN, 4250);
}

static void dead_head_stops_the_pump_after_its_time(void) {
    check_reading_stops(PRESSURE_PIN, 4200, 5000, REASON_DEAD_HEAD);
}

static void a_dry_pump_is_stopped_after_its_time_once_the_host_asks_for_it(void) {
    if (!start()) {
        return;
    }
    CHECK(host_tighten(LIMIT_DRY_AMPS, 8192));
    CHECK(host_tighten(LIMIT_DRY_MS, 1000));
    plant.millivolts[AMPS_PIN] = 1000;
    armed_at_half();
    plant.millivolts[AMPS_PIN] = 400;
    check_stops_after(1000);
    check_reading(400, (uint32_t)expect_made_safe(REASON_DRY_RUN));
    quit();
}

static void the_run_time_stops_the_pump(void) {
    if (!start()) {
        return;
    }
    CHECK(host_tighten(LIMIT_RUN_MS, 2000));
    host_keep_alive(true);
    CHECK(host_arm());
    emulated_run_ms(1000); /* armed, but not driving: not counted */
    const unsigned long long began = pins.us;
    CHECK(host_drive(0, 32768));
    ms_until_safe(4000);
    const unsigned after_ms = (unsigned)((pins.us - began) / 1000u);
    CHECK(after_ms >= 2000);
    CHECK(after_ms <= 2000 + 20 + 2 * EXCHANGE_MS);
    check_outputs_safe();
    CHECK_EQUAL(0, expect_made_safe(REASON_RUN_TIME));
    quit();
}

void limit_tests(void) {
    RUN(over_current_stops_the_pump_after_its_time);
    RUN(over_pressure_stops_the_pump_after_its_time);
    RUN(over_voltage_stops_the_pump_after_its_time);
    RUN(dead_head_stops_the_pump_after_its_time);
    RUN(a_dry_pump_is_stopped_after_its_time_once_the_host_asks_for_it);
    RUN(the_run_time_stops_the_pump);
}
