package org.pumpwright.host.plan;

/**
 * What ends a run early. Thread-safe.
 *
 * @param supplyAmpsAbove supply current, A
 * @param forSeconds for how long current, volts or pressure must be beyond their limit
 * @param voltsAtPinsBelow volts at the unit's pins, V
 * @param pressureAbovePascals outlet pressure, Pa
 * @param runSecondsAbove length of the whole run, waiting for people not counted, s
 */
public record StopRules(
        double supplyAmpsAbove,
        double forSeconds,
        double voltsAtPinsBelow,
        double pressureAbovePascals,
        double runSecondsAbove) {

    StopRules withSupplyAmpsAtMost(double amps) {
        return new StopRules(
                Math.min(amps, supplyAmpsAbove), forSeconds, voltsAtPinsBelow, pressureAbovePascals, runSecondsAbove);
    }
}
