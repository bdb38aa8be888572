package org.pumpwright.host.trace;

/** Which way a sweep was going when it came to a point. Thread-safe. */
public enum Leg {
    UP,
    DOWN,
    /** The first point again at the end, which tells warming from hysteresis. */
    REPEAT
}
