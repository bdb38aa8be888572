/* The parts of this board; each has its own file. */
#ifndef STAND_AVR328_PARTS_H
#define STAND_AVR328_PARTS_H

#include <stdbool.h>
#include <stdint.h>

enum board_meter { PUMP_METER, SECOND_METER, BOARD_METERS };
enum board_drive { PUMP_DRIVE, VALVE_DRIVE, BOARD_DRIVES };

/* Outputs to their safe levels, inputs pulled up. Before everything else. */
void pins_start(void);
void clock_start(void);
void meters_start(void);
void adc_start(void);
void uart_start(void);

/* Counts the start in the EEPROM. Returns an id that differs from the last start's, once it is stored. */
uint32_t store_fresh_boot_id(void);

/* MCUSR as the reset left it, bits as in the identity. */
uint8_t reset_cause(void);
void watchdog_start(void);

/* The converter reads its own two fixed sources once; done within some 2 ms. */
void adc_check_begin(void);
/* False while the check runs. `sound`: both readings were what they should be. */
bool adc_check_done(bool *sound);

#endif
