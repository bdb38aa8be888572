#include "event_queue.h"

#include <stddef.h>

bool event_queue_has_room(const struct event_queue *queue, uint8_t wanted) {
    return EVENTS_QUEUED - queue->waiting >= wanted;
}

void event_queue_put(struct event_queue *queue, uint32_t time, enum event_kind kind, enum safe_reason reason,
                     int32_t detail) {
    queue->newest++;
    if (!event_queue_has_room(queue, 1)) {
        /* Cannot happen while arming asks for room; the number tells the host of the loss even so. */
        return;
    }
    struct event *const event = &queue->events[(uint8_t)(queue->first + queue->waiting) % EVENTS_QUEUED];
    event->number = queue->newest;
    event->time = time;
    event->kind = (uint8_t)kind;
    event->reason = (uint8_t)reason;
    event->detail = detail;
    queue->waiting++;
}

const struct event *event_queue_first(const struct event_queue *queue) {
    return queue->waiting == 0 ? NULL : &queue->events[queue->first];
}

void event_queue_remove_first(struct event_queue *queue) {
    queue->first = (uint8_t)((queue->first + 1u) % EVENTS_QUEUED);
    queue->waiting--;
}
