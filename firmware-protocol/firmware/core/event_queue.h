/*
 * Events wait here until the transmit ring has room, so that none is lost while the line is busy.
 * Only `started`, `armed` and `made safe` exist, and a board is armed only while the queue has room for two more
 * (event_queue_has_room): so the way to safe always finds a place, however fast a host arms and makes safe.
 */
#ifndef STAND_EVENT_QUEUE_H
#define STAND_EVENT_QUEUE_H

#include <stdbool.h>
#include <stdint.h>

#include "message.h"

#define EVENTS_QUEUED 6u

struct event_queue {
    struct event events[EVENTS_QUEUED];
    uint8_t first;
    uint8_t waiting;
    uint16_t newest; /* number of the newest event, 0 before the first */
};

bool event_queue_has_room(const struct event_queue *queue, uint8_t wanted);

/* Numbers the event and queues it. The caller has seen to the room. */
void event_queue_put(struct event_queue *queue, uint32_t time, enum event_kind kind, enum safe_reason reason,
                     int32_t detail);

/* The oldest event that waits, or NULL. */
const struct event *event_queue_first(const struct event_queue *queue);

void event_queue_remove_first(struct event_queue *queue);

#endif
