/* The parts of the board that runs on a PC. */
#ifndef STAND_PC_PARTS_H
#define STAND_PC_PARTS_H

#include <stdbool.h>

#define TICK_HZ 2000000ul

/* Begins board time and the toy hardware. */
void hardware_start(void);

/* Makes the pseudo-terminal and prints its `port` line. False when the system has none. */
bool pty_start(void);

/* Moves bytes between the pseudo-terminal and the rings; never waits. */
void pty_move(void);

/* True while received bytes wait for the board. */
bool pty_has_input(void);

void pty_stop(void);

#endif
