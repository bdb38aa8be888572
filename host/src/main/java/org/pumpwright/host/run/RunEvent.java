package org.pumpwright.host.run;

import org.pumpwright.host.plan.PlanPoint;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.trace.Ending;

/** What a run tells while it goes on. Thread-safe. */
public sealed interface RunEvent {
    /** What the run is doing. */
    enum Phase {
        /** Armed, nothing driven: the stand's zeros are taken. */
        RESTING,
        SETTLING,
        MEASURING
    }

    /**
     * The stand is armed and the run begins.
     *
     * @param points how many points the plan has
     * @param expectedSeconds how long it will take when every point settles soon
     */
    record Began(int points, double expectedSeconds) implements RunEvent {}

    /**
     * The latest values, several times a second.
     *
     * @param phase what the run is doing
     * @param point the point being visited; the first one while resting
     * @param now the latest values
     * @param secondsLeft rest of the run, roughly
     */
    record Live(Phase phase, PlanPoint point, LiveValues now, double secondsLeft) implements RunEvent {}

    /**
     * A point is done.
     *
     * @param point which
     * @param mean the values over the measuring time
     * @param settled false when the settling time ran out
     * @param enoughPulses false when too few pulses came
     */
    record PointDone(PlanPoint point, LiveValues mean, boolean settled, boolean enoughPulses) implements RunEvent {}

    /**
     * The run is over and the path to safe has been taken.
     *
     * @param ending how it ended
     * @param safe what is known of the stand's state
     */
    record Ended(Ending ending, SafeState safe) implements RunEvent {}

    /**
     * Values for people to watch; the grading works on the trace, not on these.
     *
     * @param flow by the meter
     * @param supplyAmps A
     * @param voltsAtPins V
     */
    record LiveValues(FlowRate flow, double supplyAmps, double voltsAtPins) {}
}
