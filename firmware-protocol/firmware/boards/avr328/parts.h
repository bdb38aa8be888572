/* The parts of this board; each has its own file. */
#ifndef STAND_AVR328_PARTS_H
#define STAND_AVR328_PARTS_H

#include <stdint.h>

#include "message.h"

/* Outputs to their safe levels, inputs pulled up. Before everything else. */
void pins_start(void);
void clock_start(void);
void adc_start(void);
void uart_start(void);

/* Counts the start in the EEPROM and fills in boot id and unique id. */
void memory_identify(struct identity *identity);

/* MCUSR as the reset left it, bits as in the identity. */
uint8_t reset_cause(void);
void watchdog_start(void);

#endif
