package org.pumpwright.host.stand.simulated;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.SafeReason;

/** Numbers the events and holds the last eight for a host that lost one. Confined to the run thread. */
final class EventLog {
    private static final int HELD = 8;
    private static final int MASK_U16 = 0xFFFF;
    private static final int HALF_RANGE = 0x8000;

    private final Deque<Event> held = new ArrayDeque<>();
    private int newest;

    Event add(long time, EventKind kind, SafeReason reason, int detail) {
        newest = (newest + 1) & MASK_U16;
        Event event = new Event(newest, time, kind, reason, detail);
        held.add(event);
        if (held.size() > HELD) {
            held.remove();
        }
        return event;
    }

    /** The number of the newest event; 0 before the first. */
    int newest() {
        return newest;
    }

    /** The events still held from this number on, oldest first. */
    List<Event> from(int number) {
        return held.stream()
                .filter(event -> ((event.number() - number) & MASK_U16) < HALF_RANGE)
                .toList();
    }

    void clear() {
        held.clear();
        newest = 0;
    }
}
