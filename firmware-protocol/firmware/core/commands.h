/* What a sound frame from the line makes the board do. */
#ifndef STAND_COMMANDS_H
#define STAND_COMMANDS_H

#include "board.h"

void commands_obey(struct board *board, const struct frame *frame);

#endif
