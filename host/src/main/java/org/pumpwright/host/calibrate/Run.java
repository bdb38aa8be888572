package org.pumpwright.host.calibrate;

import java.util.Optional;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Require;

/**
 * What was read in one run. Thread-safe.
 *
 * @param number as on the sheet, from 1
 * @param set the flow that was aimed at; runs with the same one belong together
 * @param leg pass in which it was made
 * @param pulses of the meter under test, 1 or more; a fraction where edges are time-stamped
 * @param seconds of counting
 * @param liquidCelsius temperature of the liquid at the meter
 * @param reading of bucket, vessel or master meter
 * @param excludedBecause why it does not count; empty for a run that counts. It is printed either way
 */
public record Run(
        int number,
        FlowRate set,
        Leg leg,
        double pulses,
        double seconds,
        double liquidCelsius,
        Reading reading,
        Optional<String> excludedBecause) {
    public Run {
        Require.inRange("number of a run", number, 1, 100_000, "");
        Require.inRange("set flow", set.m3PerSecond(), 1e-9, 1e3, "m3/s");
        Require.inRange("pulses", pulses, 1, 1e12, "");
        Require.inRange("time of a run", seconds, 0.1, 1e6, "s");
        Require.inRange("liquid temperature", liquidCelsius, -10, 60, "°C");
        if (excludedBecause.filter(String::isBlank).isPresent()) {
            throw new IllegalArgumentException("run %d is left out without a reason: give one".formatted(number));
        }
    }

    public boolean counts() {
        return excludedBecause.isEmpty();
    }
}
