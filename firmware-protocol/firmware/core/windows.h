/* Pulse windows: takes the edges out of the meters' rings and sends a window for each meter at the end of a period. */
#ifndef STAND_WINDOWS_H
#define STAND_WINDOWS_H

#include "board.h"

/* The period that runs already changes nothing; another one begins anew. 0 is off. */
void windows_set(struct board *board, uint16_t period_ms, uint32_t now);

/* In every poll. */
void windows_poll(struct board *board, uint32_t now);

#endif
