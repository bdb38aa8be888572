/* Which pin of the ATmega328P does what. Pulled-up inputs read low when their loop is closed. */
#ifndef STAND_AVR328_PINS_H
#define STAND_AVR328_PINS_H

#include <avr/io.h>

/* Port B */
#define METER_0_PIN PB0  /* ICP1 */
#define METER_1_PIN PB1  /* PCINT1 */
#define FEEDBACK_PIN PB2
#define SPARE_PB_A PB3   /* spare pins are pulled up, so that they do not float */
#define SPARE_PB_B PB4
#define ARMED_LAMP_PIN PB5

/* Port C */
#define LEVEL_PIN PC4
#define OVERRIDE_PIN PC5

/* Port D */
#define SPARE_PD PD2
#define VALVE_DRIVE_PIN PD3 /* OC2B */
#define EMERGENCY_STOP_PIN PD4
#define GUARD_PIN PD5
#define PUMP_DRIVE_PIN PD6  /* OC0A */
#define CONTACTOR_PIN PD7

#define TICK_HZ 2000000ul /* Timer1: 16 MHz / 8 */
#define DRIVE_PWM_HZ 7812u /* Timer0 and Timer2: 16 MHz / 8 / 256 = 7812.5 Hz */

#endif
