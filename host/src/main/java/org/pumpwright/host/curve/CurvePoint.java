package org.pumpwright.host.curve;

import java.util.Optional;

/**
 * The healthy population at one value of effective volts. Thread-safe.
 *
 * @param effectiveVolts V
 * @param flowM3PerSecond mean flow
 * @param flowSpread standard deviation of the flow of one run of a unit, as a share of the mean
 * @param motorAmps mean motor current, A
 * @param motorAmpsSpread standard deviation of the current of one run of a unit, as a share of the mean
 * @param flowParts what the flow's spread is made of; empty where that is not known
 * @param motorAmpsParts what the current's spread is made of; empty where that is not known
 */
public record CurvePoint(
        double effectiveVolts,
        double flowM3PerSecond,
        double flowSpread,
        double motorAmps,
        double motorAmpsSpread,
        Optional<SpreadParts> flowParts,
        Optional<SpreadParts> motorAmpsParts) {
    /** A point of which only the whole spread is known. */
    public CurvePoint(
            double effectiveVolts,
            double flowM3PerSecond,
            double flowSpread,
            double motorAmps,
            double motorAmpsSpread) {
        this(
                effectiveVolts,
                flowM3PerSecond,
                flowSpread,
                motorAmps,
                motorAmpsSpread,
                Optional.empty(),
                Optional.empty());
    }
}
