package org.pumpwright.host.calibrate;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;

/**
 * What is said about the meter before the test. Thread-safe.
 *
 * @param meter flows that it is made for
 * @param range flows over which its one K is to hold
 * @param working where the customer's planter runs; at least one
 * @param startFlow at which its rotor begins to turn, where known
 * @param previous K of the last test, where known
 * @param nominal K by its data sheet, where known
 */
public record Declared(
        FlowRange meter,
        FlowRange range,
        List<WorkingFlow> working,
        Optional<FlowRate> startFlow,
        Optional<KFactor> previous,
        Optional<KFactor> nominal) {
    public Declared {
        working = List.copyOf(working);
        if (working.isEmpty()) {
            throw new IllegalArgumentException("a K-factor for the customer needs at least one working flow");
        }
    }
}
