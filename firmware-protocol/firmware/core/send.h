/*
 * What the board says. Nothing here waits for the line: an answer or a sample that finds no room is dropped and its
 * sequence number is used up, so the host sees the gap; an event stays queued instead.
 */
#ifndef STAND_SEND_H
#define STAND_SEND_H

#include "board.h"

/* Ends what a receiver may have heard of noise or of half a frame. */
void send_delimiter(void);

/* With a delimiter before it: a host that has just opened the line hears nothing before the first one. */
void send_identity(struct board *board);

/* Acknowledges, or refuses when the refusal has a reason. */
void send_answer(struct board *board, const struct frame *frame, struct refusal refusal);

/* Sends what the queue holds and the ring takes. */
void send_events(struct board *board);

/* Sends a sample only where it leaves room for answers and events, and never before an event that it counts. */
void send_when_idle(struct board *board, const struct sample *sample);

#endif
