/* The parts of the board that runs on a PC. */
#ifndef STAND_PC_PARTS_H
#define STAND_PC_PARTS_H

#include <stdbool.h>
#include <stdint.h>

#include "hal.h"

#define TICK_HZ 2000000ul
#define AS_USUAL (-1) /* of a thing that a command may force: the toy hardware decides */

/* Board time begins anew. */
void clock_start(void);
/* Ticks since clock_start, without roll-over. */
uint64_t clock_run_ticks(void);

/* The toy hardware as a reset finds it: outputs off, counts at their start. What was forced stays forced. */
void outputs_start(void);
void meters_start(void);
void analogs_start(void);

/* The duty of the pump drive, 0 .. 1. */
double outputs_pump_duty(void);
/* The duty is about to change: what depends on it is brought up to date. */
void meters_run(void);

/* Board time at which the contactor last changed, and how it is. */
uint64_t outputs_contactor_since(void);
bool outputs_contactor_pulled(void);

/* Opens or closes an input by its bit. */
void inputs_force(uint8_t bit, bool closed);
/* 0, 1 or AS_USUAL: ten milliseconds behind the contactor. */
void inputs_force_feedback(int closed);
/* A left-justified code on a channel, or AS_USUAL. */
void analogs_force(uint8_t channel, long code);
/* Stops the converter, or lets it run again. */
void analogs_run(bool runs);
/* Hertz on both meters, or AS_USUAL. */
void meters_force(double hz);

/* Makes the pseudo-terminal and prints its `port` line. False when the system has none. */
bool pty_start(void);

/* Throws away what waits in the rings, as a reset does. */
void pty_reset(void);

/* Moves bytes between the pseudo-terminal and the rings; never waits. */
void pty_move(void);

/* True while received bytes wait for the board. */
bool pty_has_input(void);

void pty_stop(void);

enum provoked { PROVOKED_NOTHING, PROVOKED_RESTART, PROVOKED_END };

/* Obeys the lines that wait on the standard input, after waiting a little for one. */
enum provoked provoke(void);

#endif
