/* ATmega328P at 16 MHz: one meter, one pump drive, four analogue channels. */
#include <avr/interrupt.h>
#include <avr/sleep.h>

#include "board.h"
#include "parts.h"
#include "pins.h"

static struct identity identity = {
    .firmware_major = 0,
    .firmware_minor = 1,
    .firmware_patch = 0,
    .meters = 1,
    .drives = 1,
    .analogs = 4,
    .tick_hz = TICK_HZ,
    .pwm_hz = {PUMP_PWM_HZ, 0},
    .ramp_limit = 131, /* 500 ms from 0 to full */
    .link_timeout_ms = 750,
    .current_channel = 1,
    .over_current_limit = 49152, /* three quarters of full scale */
    .over_current_ms = 50,
    .kind = {'a', 'v', 'r', '3', '2', '8', 0, 0},
};

static struct board board;

int main(void) {
    pins_start();
    watchdog_start();
    identity.reset_cause = reset_cause();
    memory_identify(&identity);
    clock_start();
    adc_start();
    uart_start();
    sei();
    board_start(&board, &identity, PROTOCOL_VERSION);
    SMCR = _BV(SE); /* idle mode: everything but the processor runs on */
    for (;;) {
        board_poll(&board);
        /* Until the next interrupt, which is the PWM timer's 128 us from now at the latest. */
        sleep_cpu();
    }
}
