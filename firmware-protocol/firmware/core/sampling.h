/*
 * Readings and samples. Apart from board.c, so that their large variables are not on the stack of everything else.
 */
#ifndef STAND_SAMPLING_H
#define STAND_SAMPLING_H

#include <stdint.h>

#include "board.h"

/* Takes the readings since the last time into the window, and has the safety rules judge them. */
void sampling_collect(struct board *board, uint32_t now);

/* Ends the window and sends it. */
void sampling_send(struct board *board);

#endif
