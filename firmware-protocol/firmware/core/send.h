/*
 * What the board says. Nothing here waits for the line: an answer or a sample that finds no room is dropped and its
 * sequence number is used up, so the host sees the gap; an event or a pulse window stays where it is instead.
 */
#ifndef STAND_SEND_H
#define STAND_SEND_H

#include "board.h"

/* Ends what a receiver may have heard of noise or of half a frame. */
void send_delimiter(void);

/* With a delimiter before it: a host that has just opened the line hears nothing before the first one. */
void send_identity(struct board *board);

/* Acknowledges, or refuses when the refusal has a reason. */
void send_answer(struct board *board, uint16_t sequence, uint8_t type, struct refusal refusal);

void send_limits(struct board *board);
void send_self_test(struct board *board, const struct self_test *result);
void send_blob_data(struct board *board, uint8_t blob, uint16_t offset, uint8_t count);

/* Sends what the log still has to send and the ring takes; then the answer that waited for it. */
void send_events(struct board *board);

/* Sends a sample only where it leaves room for answers and events, and never before an event that it counts. */
void send_when_idle(struct board *board, const struct sample *sample);

/* Windows leave room for an answer and an event too. */
bool send_has_room_for_window(void);
void send_pulse_window(struct board *board, uint8_t meter, const struct pulse_window *window);

#endif
