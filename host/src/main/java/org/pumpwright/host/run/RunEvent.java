package org.pumpwright.host.run;

import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.PlanPoint;
import org.pumpwright.host.plan.Step;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;

/** What a run tells while it goes on. Thread-safe. */
public sealed interface RunEvent {
    /** What the run is doing. */
    enum Phase {
        /** Armed, nothing driven: the stand's zeros are taken. */
        RESTING,
        SETTLING,
        MEASURING,
        RAMPING,
        HOLDING
    }

    /**
     * Where in the plan the run is.
     *
     * @param step the step's name; empty before the first
     * @param part the point's number, or which of several times; from 1
     * @param leg which way a sweep is going; {@code UP} elsewhere
     * @param duty the set point
     */
    record Where(String step, int part, Leg leg, Duty duty) {}

    /**
     * The stand is armed and the run begins.
     *
     * @param points how many points the plan has
     * @param expectedSeconds how long it will take when every point settles soon
     */
    record Began(int points, double expectedSeconds) implements RunEvent {}

    /** The stand's zeros were taken: what was recorded at rest tells whether it is fit to go on. */
    record Rested(Trace atRest) implements RunEvent {}

    /** A step begins. */
    record StepBegan(Step step) implements RunEvent {}

    /**
     * The latest values, several times a second.
     *
     * @param phase what the run is doing
     * @param where in the plan
     * @param now the latest values
     * @param secondsLeft rest of the run, roughly
     * @param from the first sample behind the values
     * @param to the last one
     */
    record Live(Phase phase, Where where, LiveValues now, double secondsLeft, Sample from, Sample to)
            implements RunEvent {}

    /**
     * A point is done.
     *
     * @param point which
     * @param mean the values over the measuring time
     * @param settled false when the settling time ran out
     * @param enoughPulses false when too few pulses came
     */
    record PointDone(PlanPoint point, LiveValues mean, boolean settled, boolean enoughPulses) implements RunEvent {}

    /** The stand is safe and a person is asked. */
    record Asked(Ask question) implements RunEvent {}

    /** What was answered is no answer to the question. */
    record NotAnAnswer(Ask question, String given) implements RunEvent {}

    /** The person has answered and the run goes on. */
    record Answered(Ask question, String word) implements RunEvent {}

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
     * @param flowUncertainty of the flow, as a share of it, without the meter's calibration; infinite while unknown
     * @param supplyAmps A
     * @param voltsAtPins V
     */
    record LiveValues(FlowRate flow, double flowUncertainty, double supplyAmps, double voltsAtPins) {}
}
