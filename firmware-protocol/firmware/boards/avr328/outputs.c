/* Pump drive, valve drive, contactor and armed lamp. */
#include <avr/interrupt.h>
#include <avr/io.h>

#include "hal.h"
#include "parts.h"
#include "pins.h"

#define STEPS 256u
#define DUTY_PER_STEP (DUTY_FULL / STEPS)
#define FAST_PWM_0 (_BV(WGM01) | _BV(WGM00))
#define FAST_PWM_2 (_BV(WGM21) | _BV(WGM20))

void pins_start(void) {
    PORTD = _BV(SPARE_PD) | _BV(EMERGENCY_STOP_PIN) | _BV(GUARD_PIN);
    DDRD = _BV(VALVE_DRIVE_PIN) | _BV(PUMP_DRIVE_PIN) | _BV(CONTACTOR_PIN);
    PORTB = _BV(METER_0_PIN) | _BV(METER_1_PIN) | _BV(FEEDBACK_PIN) | _BV(SPARE_PB_A) | _BV(SPARE_PB_B);
    DDRB = _BV(ARMED_LAMP_PIN);
    PORTC = _BV(LEVEL_PIN) | _BV(OVERRIDE_PIN);
    /* Fast PWM, clock / 8; each pin stays with its port until a duty between 0 and full is set. */
    TCCR0A = FAST_PWM_0;
    TCCR0B = _BV(CS01);
    TCCR2A = FAST_PWM_2;
    TCCR2B = _BV(CS21);
    /* Timer0's overflow wakes the main loop even where nothing else would. */
    TIMSK0 = _BV(TOIE0);
}

EMPTY_INTERRUPT(TIMER0_OVF_vect)

static uint16_t steps_of(uint32_t duty) {
    return (uint16_t)((duty + DUTY_PER_STEP / 2u) / DUTY_PER_STEP);
}

uint32_t hal_drive_rounded(uint8_t channel, uint32_t duty) {
    (void)channel;
    return steps_of(duty) * DUTY_PER_STEP;
}

static void set_port_d(uint8_t pin, bool high) {
    if (high) {
        PORTD = (uint8_t)(PORTD | _BV(pin));
    } else {
        PORTD = (uint8_t)(PORTD & ~_BV(pin));
    }
}

/*
 * The timer cannot hold its pin low, and not every one holds it high: 0 and full are the port's. A compare value is
 * taken over at the end of a turn only, so the one left behind is the least: the next time begins small.
 */
static void set_pump(uint16_t steps) {
    if (steps == 0 || steps >= STEPS) {
        set_port_d(PUMP_DRIVE_PIN, steps != 0);
        TCCR0A = FAST_PWM_0;
        OCR0A = 0;
    } else {
        /* The pin is high for the compare value + 1 counts out of 256. */
        OCR0A = (uint8_t)(steps - 1u);
        TCCR0A = _BV(COM0A1) | FAST_PWM_0;
    }
}

static void set_valve(uint16_t steps) {
    if (steps == 0 || steps >= STEPS) {
        set_port_d(VALVE_DRIVE_PIN, steps != 0);
        TCCR2A = FAST_PWM_2;
        OCR2B = 0;
    } else {
        OCR2B = (uint8_t)(steps - 1u);
        TCCR2A = _BV(COM2B1) | FAST_PWM_2;
    }
}

void hal_drive_set(uint8_t channel, uint32_t duty) {
    if (channel == PUMP_DRIVE) {
        set_pump(steps_of(duty));
    } else {
        set_valve(steps_of(duty));
    }
}

void hal_contactor_set(bool pulled) {
    set_port_d(CONTACTOR_PIN, pulled);
}

void hal_armed_lamp_set(bool lit) {
    if (lit) {
        PORTB |= _BV(ARMED_LAMP_PIN);
    } else {
        PORTB &= (uint8_t)~_BV(ARMED_LAMP_PIN);
    }
}
