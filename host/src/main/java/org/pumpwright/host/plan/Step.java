package org.pumpwright.host.plan;

/** One step of a plan. Thread-safe. */
public sealed interface Step permits Sweep, Ramp, Hold, Ask {
    /** Names the step in the trace and on papers; each at most once in a plan. */
    String name();

    /** The least time that it takes, s; waiting for people is not counted. */
    double leastSeconds();
}
