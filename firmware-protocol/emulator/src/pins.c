/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "pins.h"

#include <simavr/avr_adc.h>
#include <simavr/avr_ioport.h>

#define SUPPLY_MV 5000u

/* Data addresses of the ATmega328P (data sheet, register summary). */
enum { PINB_AT = 0x23, PINC_AT = 0x26, PIND_AT = 0x29 };
enum { DDRD_AT = 0x2A, PORTD_AT = 0x2B, TCCR0A_AT = 0x44, OCR0A_AT = 0x47, TCCR2A_AT = 0xB0, OCR2B_AT = 0xB4 };

/* Where the firmware has what; see its README. */
enum { METER_0_PB = 0, FEEDBACK_PB = 2 };
enum { LEVEL_PC = 4, OVERRIDE_PC = 5 };
enum { UNUSED_PD = 2, VALVE_PD = 3, EMERGENCY_STOP_PD = 4, GUARD_PD = 5, PUMP_PD = 6, CONTACTOR_PD = 7 };

#define METER_PINS 3u /* PB0 and PB1 */

static unsigned meter_levels;
static bool feedback;

static avr_irq_t *port_pin(avr_t *avr, char port, int pin) {
    return avr_io_getirq(avr, AVR_IOCTL_IOPORT_GETIRQ(port), pin);
}

/*
 * Drives pins from outside. The level must also be told as the port's external one: at each write of the port the
 * library sets every input pin anew, and would let a pull-up win over what drives the pin.
 */
static void drive_port(avr_t *avr, char port, unsigned driven, unsigned high) {
    avr_ioport_external_t levels = {.name = (unsigned char)port, .mask = driven, .value = high};
    avr_ioctl(avr, AVR_IOCTL_IOPORT_SET_EXTERNAL(port), &levels);
    for (int pin = 0; pin < 8; pin++) {
        if ((driven >> pin & 1u) != 0) {
            avr_raise_irq(port_pin(avr, port, pin), high >> pin & 1u);
        }
    }
    /* A reset clears the register, but a level that stays as it was is no news to the library. */
    uint8_t *const levels_read = &avr->data[port == 'B' ? PINB_AT : port == 'C' ? PINC_AT : PIND_AT];
    *levels_read = (uint8_t)((*levels_read & ~driven) | (high & driven));
}

static void drive_port_b(avr_t *avr) {
    drive_port(avr, 'B', METER_PINS | 1u << FEEDBACK_PB, meter_levels | (feedback ? 0u : 1u << FEEDBACK_PB));
}

/* A closed loop pulls its pin low. */
static unsigned level_of(const struct chip_inputs *inputs, enum chip_loop loop, int pin) {
    return (inputs->closed & loop) != 0 ? 0u : 1u << pin;
}

/* The library scales to 1023 steps where the chip has 1024, so it gets the voltage that makes it read the code. */
static uint32_t millivolts_for(uint16_t code) {
    return (code * SUPPLY_MV + CODE_MAX - 1u) / CODE_MAX;
}

void pins_drive(avr_t *avr, const struct chip_inputs *inputs, bool feedback_closed) {
    const unsigned unused = 1u << UNUSED_PD; /* nothing holds it against its pull-up */

    feedback = feedback_closed;
    drive_port_b(avr);
    drive_port(avr, 'C', 1u << LEVEL_PC | 1u << OVERRIDE_PC,
               level_of(inputs, LOOP_LEVEL, LEVEL_PC) | level_of(inputs, LOOP_OVERRIDE, OVERRIDE_PC));
    drive_port(avr, 'D', unused | 1u << EMERGENCY_STOP_PD | 1u << GUARD_PD,
               unused | level_of(inputs, LOOP_EMERGENCY_STOP, EMERGENCY_STOP_PD)
                   | level_of(inputs, LOOP_GUARD, GUARD_PD));
    for (unsigned i = 0; i < ANALOG_PINS; i++) {
        avr_irq_t *const pin = avr_io_getirq(avr, AVR_IOCTL_ADC_GETIRQ, ADC_IRQ_ADC0 + (int)i);
        avr_raise_irq(pin, millivolts_for(inputs->codes[i]));
    }
}

void pins_set_meter(avr_t *avr, unsigned meter, bool high) {
    const unsigned pin = 1u << (METER_0_PB + meter);
    meter_levels = high ? meter_levels | pin : meter_levels & ~pin;
    drive_port_b(avr);
}

static bool is_driven_high(const avr_t *avr, int pin) {
    return ((avr->data[DDRD_AT] & avr->data[PORTD_AT]) >> pin & 1) != 0;
}

/* Where the timer has the pin it is high for its compare value + 1 counts of 256, else the port has it. */
static uint32_t duty_of(const avr_t *avr, int pin, bool by_timer, unsigned compare_at) {
    if (by_timer && (avr->data[DDRD_AT] >> pin & 1) != 0) {
        return (avr->data[compare_at] + 1u) * 256u;
    }
    return is_driven_high(avr, pin) ? 65536u : 0u;
}

struct chip_outputs pins_read(const avr_t *avr) {
    const bool pump_by_timer = (avr->data[TCCR0A_AT] & 0xC0) == 0x80;
    const bool valve_by_timer = (avr->data[TCCR2A_AT] & 0x30) == 0x20;
    const struct chip_outputs outputs = {
        {duty_of(avr, PUMP_PD, pump_by_timer, OCR0A_AT), duty_of(avr, VALVE_PD, valve_by_timer, OCR2B_AT)},
        is_driven_high(avr, CONTACTOR_PD)};
    return outputs;
}
