/* ATmega328P at 16 MHz: two meters, a pump drive, a valve drive and four analogue channels. */
#include <avr/interrupt.h>
#include <avr/sleep.h>

#include "board.h"
#include "message.h"
#include "parts.h"
#include "pins.h"

/* Of 65536. What they are in amps, pascals and volts is a matter of the sensors behind the pins. */
#define THREE_QUARTERS 49152u
#define EIGHT_TENTHS 52429u
#define EIGHTY_FIVE_HUNDREDTHS 55706u
#define NINE_TENTHS 58982u

static struct description description = {
    .meters = BOARD_METERS,
    .drives = BOARD_DRIVES,
    .analogs = 4,
    .tick_hz = TICK_HZ,
    .pwm_hz = {DRIVE_PWM_HZ, DRIVE_PWM_HZ},
    .ramp_limit = 131, /* 500 ms from 0 to full */
    .roles = {ROLE_VOLTS, ROLE_AMPS, ROLE_PRESSURE, ROLE_TEMPERATURE},
    .limits =
        {
            [LIMIT_AMPS] = THREE_QUARTERS,
            [LIMIT_AMPS_MS] = 50,
            [LIMIT_RUN_MS] = 2400000,
            [LIMIT_PRESSURE] = NINE_TENTHS,
            [LIMIT_PRESSURE_MS] = 100,
            [LIMIT_DEAD_HEAD_PRESSURE] = EIGHT_TENTHS,
            [LIMIT_DEAD_HEAD_MS] = 5000,
            [LIMIT_DRY_AMPS] = 0, /* off until a host that knows the pump asks for more */
            [LIMIT_DRY_MS] = 5000,
            [LIMIT_VOLTS] = EIGHTY_FIVE_HUNDREDTHS,
            [LIMIT_VOLTS_MS] = 50,
            [LIMIT_LINK_MS] = 750,
        },
    .kind = {'a', 'v', 'r', '3', '2', '8', 0, 0},
};

static struct board board;

int main(void) {
    pins_start();
    watchdog_start();
    description.reset_cause = reset_cause();
    description.boot_id = store_fresh_boot_id();
    clock_start();
    meters_start();
    adc_start();
    uart_start();
    sei();
    board_start(&board, &description, PROTOCOL_VERSION);
    SMCR = _BV(SE); /* idle mode: everything but the processor runs on */
    for (;;) {
        board_poll(&board);
        /* Until the next interrupt, which is Timer0's 128 us from now at the latest. */
        sleep_cpu();
    }
}
