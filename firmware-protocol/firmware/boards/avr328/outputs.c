/* Pump drive, contactor, armed lamp and the two safety inputs. */
#include <avr/interrupt.h>
#include <avr/io.h>

#include "hal.h"
#include "parts.h"
#include "pins.h"

#define STEPS 256u
#define DUTY_PER_STEP (DUTY_FULL / STEPS)

void pins_start(void) {
    PORTD = _BV(SPARE_INPUT_A_PIN) | _BV(SPARE_INPUT_B_PIN) | _BV(EMERGENCY_STOP_PIN) | _BV(GUARD_PIN);
    DDRD = _BV(PUMP_DRIVE_PIN) | _BV(CONTACTOR_PIN);
    PORTB = _BV(METER_0_PIN);
    DDRB = _BV(ARMED_LAMP_PIN);
    /* Fast PWM on Timer0, clock / 8; the pin stays with the port until a duty between 0 and full is set. */
    TCCR0A = _BV(WGM01) | _BV(WGM00);
    TCCR0B = _BV(CS01);
    /* Its overflow wakes the main loop even where nothing else would. */
    TIMSK0 = _BV(TOIE0);
}

EMPTY_INTERRUPT(TIMER0_OVF_vect)

/* The timer cannot hold its pin low, and not every one holds it high: 0 and full are the port's. */
static void pump_by_port(uint8_t high) {
    if (high) {
        PORTD |= _BV(PUMP_DRIVE_PIN);
    } else {
        PORTD &= (uint8_t)~_BV(PUMP_DRIVE_PIN);
    }
    TCCR0A = _BV(WGM01) | _BV(WGM00);
}

uint32_t hal_drive_set(uint8_t channel, uint32_t duty) {
    const uint16_t steps = (uint16_t)((duty + DUTY_PER_STEP / 2u) / DUTY_PER_STEP);

    (void)channel;
    if (steps == 0 || steps >= STEPS) {
        pump_by_port(steps != 0);
    } else {
        /* The pin is high for OCR0A + 1 counts out of 256. */
        OCR0A = (uint8_t)(steps - 1u);
        TCCR0A = _BV(COM0A1) | _BV(WGM01) | _BV(WGM00);
    }
    return steps * DUTY_PER_STEP;
}

void hal_contactor_set(bool closed) {
    if (closed) {
        PORTD |= _BV(CONTACTOR_PIN);
    } else {
        PORTD &= (uint8_t)~_BV(CONTACTOR_PIN);
    }
}

void hal_armed_lamp_set(bool lit) {
    if (lit) {
        PORTB |= _BV(ARMED_LAMP_PIN);
    } else {
        PORTB &= (uint8_t)~_BV(ARMED_LAMP_PIN);
    }
}

uint8_t hal_inputs(void) {
    const uint8_t pins = PIND;
    uint8_t closed = 0;
    if ((pins & _BV(EMERGENCY_STOP_PIN)) == 0) {
        closed |= INPUT_EMERGENCY_STOP;
    }
    if ((pins & _BV(GUARD_PIN)) == 0) {
        closed |= INPUT_GUARD;
    }
    return closed;
}
