/* Windows of analogue readings: kept as sums, so that windows can be joined, and read as mean, lowest and highest. */
#ifndef STAND_ANALOG_H
#define STAND_ANALOG_H

#include "message.h"

void analog_clear(struct analog_sums *window);

/* Joins two windows. What would overflow the count is left out, which no window of the protocol reaches. */
void analog_join(struct analog_sums *window, const struct analog_sums *taken);

/* Reads every channel. The window must hold at least one reading. */
void analog_read(const struct analog_sums *window, struct analog_reading readings[ANALOGS_MAX]);

uint16_t analog_mean(const struct analog_sums *window, uint8_t channel);

#endif
