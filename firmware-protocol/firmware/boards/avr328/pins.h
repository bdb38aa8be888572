/* Which pin of the ATmega328P does what. Pulled-up inputs read low when their loop is closed. */
#ifndef STAND_AVR328_PINS_H
#define STAND_AVR328_PINS_H

#include <avr/io.h>

#define METER_0_PIN PB0       /* ICP1 */
#define ARMED_LAMP_PIN PB5
#define SPARE_INPUT_A_PIN PD2 /* pulled up, so that it does not float */
#define SPARE_INPUT_B_PIN PD3
#define EMERGENCY_STOP_PIN PD4
#define GUARD_PIN PD5
#define PUMP_DRIVE_PIN PD6    /* OC0A */
#define CONTACTOR_PIN PD7

#define TICK_HZ 2000000ul     /* Timer1: 16 MHz / 8 */
#define PUMP_PWM_HZ 7812u     /* Timer0: 16 MHz / 8 / 256 = 7812.5 Hz */

#endif
