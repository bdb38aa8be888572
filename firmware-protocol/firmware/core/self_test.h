/* The self-test: the board's own part piece by piece, then what the core can tell. */
#ifndef STAND_SELF_TEST_H
#define STAND_SELF_TEST_H

#include "board.h"

/* Begins; not while one runs. */
void self_test_begin(struct board *board);

/* Goes on, in every poll. At the end it sends the result, and locks the board if a vital part failed. */
void self_test_poll(struct board *board);

#endif
