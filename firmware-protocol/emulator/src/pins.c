/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "pins.h"

#include <simavr/avr_adc.h>
#include <simavr/avr_ioport.h>

/* Data addresses of the ATmega328P (data sheet, register summary). */
enum { DDRD_AT = 0x2A, PORTD_AT = 0x2B, TCCR0A_AT = 0x44, OCR0A_AT = 0x47 };

enum { METER_PIN = 0, EMERGENCY_STOP_PIN = 4, GUARD_PIN = 5, PUMP_PIN = 6, CONTACTOR_PIN = 7 };

static avr_irq_t *port_pin(avr_t *avr, char port, int pin) {
    return avr_io_getirq(avr, AVR_IOCTL_IOPORT_GETIRQ(port), pin);
}

void pins_pulse_meter(avr_t *avr) {
    avr_raise_irq(port_pin(avr, 'B', METER_PIN), 1);
    avr_raise_irq(port_pin(avr, 'B', METER_PIN), 0);
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
}

void pins_drive(avr_t *avr, const struct chip_inputs *inputs) {
    const unsigned idle = 1u << 2 | 1u << 3; /* external interrupt pins: low, they would be level triggers */
    const unsigned open_emergency_stop = inputs->emergency_stop_closed ? 0u : 1u << EMERGENCY_STOP_PIN;
    const unsigned open_guard = inputs->guard_closed ? 0u : 1u << GUARD_PIN;

    drive_port(avr, 'D', idle | 1u << EMERGENCY_STOP_PIN | 1u << GUARD_PIN, idle | open_emergency_stop | open_guard);
    drive_port(avr, 'B', 1u << METER_PIN, 0);
    for (unsigned i = 0; i < ANALOG_PINS; i++) {
        avr_raise_irq(avr_io_getirq(avr, AVR_IOCTL_ADC_GETIRQ, ADC_IRQ_ADC0 + (int)i), inputs->millivolts[i]);
    }
}

static bool is_driven_high(const avr_t *avr, int pin) {
    return ((avr->data[DDRD_AT] & avr->data[PORTD_AT]) >> pin & 1) != 0;
}

/* Where the timer has the pin it is high for OCR0A + 1 counts of 256, else the port has it. */
struct chip_outputs pins_read(const avr_t *avr) {
    struct chip_outputs outputs;
    const bool by_timer = (avr->data[TCCR0A_AT] & 0xC0) == 0x80;
    if (by_timer && (avr->data[DDRD_AT] >> PUMP_PIN & 1) != 0) {
        outputs.pump_duty = (avr->data[OCR0A_AT] + 1u) * 256u;
    } else {
        outputs.pump_duty = is_driven_high(avr, PUMP_PIN) ? 65536u : 0u;
    }
    outputs.contactor_closed = is_driven_high(avr, CONTACTOR_PIN);
    return outputs;
}
