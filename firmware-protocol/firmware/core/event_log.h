/*
 * The newest events. They stay here when they are sent, so that a host may ask for them again, and none is overwritten
 * before it was sent: a board is armed only while there is room for what may follow (event_log_has_room).
 */
#ifndef STAND_EVENT_LOG_H
#define STAND_EVENT_LOG_H

#include <stdbool.h>
#include <stdint.h>

#include "message.h"

#define EVENTS_HELD 8u

struct event_log {
    struct event events[EVENTS_HELD]; /* each at its number modulo EVENTS_HELD */
    uint8_t held;
    uint16_t newest; /* number of the newest event, 0 before the first */
    uint16_t sent;   /* up to this number they have been sent at least once */
    uint16_t next;   /* number of the next to send; behind the newest when there is none */
};

void event_log_start(struct event_log *log);

/* Room for so many more before one is overwritten that was never sent. */
bool event_log_has_room(const struct event_log *log, uint8_t wanted);

/* Numbers the event and keeps it. The caller has seen to the room. */
void event_log_put(struct event_log *log, uint32_t time, enum event_kind kind, enum safe_reason reason,
                   int32_t detail);

/* Sends again what is held from this number on. */
void event_log_repeat(struct event_log *log, uint16_t number);

/* The next event to send, or NULL. */
const struct event *event_log_next(const struct event_log *log);

/* The next event has been sent. */
void event_log_advance(struct event_log *log);

#endif
