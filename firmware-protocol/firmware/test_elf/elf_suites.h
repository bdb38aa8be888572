/* The tests of the ELF by subject, and what they share. */
#ifndef STAND_ELF_SUITES_H
#define STAND_ELF_SUITES_H

#include <stdbool.h>
#include <stdint.h>

#include "emulated.h"

void identity_tests(void);
void contactor_tests(void);
void input_tests(void);
void limit_tests(void);
void drive_tests(void);
void reading_tests(void);
void meter_tests(void);
void store_tests(void);
void reset_tests(void);
void line_tests(void);

/* Starts with a blank EEPROM and everything well. */
bool start(void);
/* Checks that the emulator ends well. */
void quit(void);

/* Arms, with keep-alives, and brings the pump to half duty. */
void armed_at_half(void);

/* The next event of this kind within so many milliseconds; checked to be there. NULL when it is not. */
const struct board_frame *expect_event(uint8_t kind, unsigned within_ms);
/* The board was made safe for this reason; its detail. */
int32_t expect_made_safe(uint8_t reason);

/* Runs until the contactor is let go, and returns the virtual milliseconds from now till then, or so many at most. */
unsigned ms_until_safe(unsigned most_ms);

void check_outputs_safe(void);

/* A left-justified reading of the ten-bit converter: exactly what this voltage is. */
void check_reading(unsigned millivolts, uint32_t reading);

#endif
