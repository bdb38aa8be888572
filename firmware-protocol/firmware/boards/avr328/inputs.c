/* The loops that the board watches. Each pulls its pin low while it is closed, so a broken wire reads open. */
#include <avr/io.h>

#include "hal.h"
#include "parts.h"
#include "pins.h"

static uint8_t closed(uint8_t port, uint8_t pin, uint8_t bit) {
    return (port & _BV(pin)) == 0 ? bit : 0u;
}

uint8_t hal_inputs(void) {
    const uint8_t port_d = PIND;
    const uint8_t port_c = PINC;
    const uint8_t port_b = PINB;

    return (uint8_t)(closed(port_d, EMERGENCY_STOP_PIN, INPUT_EMERGENCY_STOP) | closed(port_d, GUARD_PIN, INPUT_GUARD)
                     | closed(port_c, LEVEL_PIN, INPUT_LEVEL) | closed(port_c, OVERRIDE_PIN, INPUT_OVERRIDE)
                     | closed(port_b, FEEDBACK_PIN, INPUT_FEEDBACK));
}
