/*
 * Reset cause and hardware watchdog. After a watchdog reset the watchdog runs on at its shortest time, so it is
 * stopped before the C start-up code; MCUSR must be read and cleared there too.
 */
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/wdt.h>

#include "hal.h"
#include "parts.h"

static uint8_t cause __attribute__((section(".noinit")));

void reset_early(void) __attribute__((naked, used, section(".init3")));
void reset_early(void) {
    cause = MCUSR;
    MCUSR = 0;
    wdt_disable();
}

uint8_t reset_cause(void) {
    /* PORF, EXTRF, BORF, WDRF are bits 0..3 in the chip as in the protocol. */
    return cause & (RESET_POWER_ON | RESET_EXTERNAL | RESET_BROWN_OUT | RESET_WATCHDOG);
}

void watchdog_start(void) {
    wdt_enable(WDTO_250MS);
}

void hal_watchdog_kick(void) {
    wdt_reset();
}
