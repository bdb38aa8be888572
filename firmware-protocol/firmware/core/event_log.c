#include "event_log.h"

#include <stddef.h>
#include <string.h>

void event_log_start(struct event_log *log) {
    memset(log, 0, sizeof *log);
    log->next = 1;
}

bool event_log_has_room(const struct event_log *log, uint8_t wanted) {
    return (uint16_t)(log->newest - log->sent) + wanted <= EVENTS_HELD;
}

void event_log_put(struct event_log *log, uint32_t time, enum event_kind kind, enum safe_reason reason,
                   int32_t detail) {
    log->newest++;
    struct event *const event = &log->events[log->newest % EVENTS_HELD];
    event->number = log->newest;
    event->time = time;
    event->kind = (uint8_t)kind;
    event->reason = (uint8_t)reason;
    event->detail = detail;
    if (log->held < EVENTS_HELD) {
        log->held++;
    } else if ((uint16_t)(log->newest - log->next) >= EVENTS_HELD) {
        /* The oldest was waiting to be sent once more; it is gone now. */
        log->next++;
    }
}

void event_log_repeat(struct event_log *log, uint16_t number) {
    const uint16_t oldest = (uint16_t)(log->newest - log->held + 1u);
    if ((uint16_t)(oldest - number) < 0x8000u) {
        log->next = oldest;
    } else if ((uint16_t)(number - oldest) < (uint16_t)(log->next - oldest)) {
        /* Only ever backwards: those that wait to be sent for the first time are not skipped. */
        log->next = number;
    }
}

const struct event *event_log_next(const struct event_log *log) {
    return log->next == (uint16_t)(log->newest + 1u) ? NULL : &log->events[log->next % EVENTS_HELD];
}

void event_log_advance(struct event_log *log) {
    if (log->next == (uint16_t)(log->sent + 1u)) {
        log->sent = log->next;
    }
    log->next++;
}
