package org.pumpwright.host.grade.cause;

import java.util.Optional;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.PulseHealth;
import org.pumpwright.host.trace.Leg;

/**
 * What one driven point of a sweep has read, as far as causes are concerned, in SI units. Thread-safe.
 *
 * @param leg on which way
 * @param percent the set point, percent of full duty
 * @param duty mean duty that the pin got, above 0 up to 1
 * @param flow m3/s
 * @param voltsAtPins V
 * @param supplyAmps A
 * @param pressure outlet pressure, Pa; empty where the stand has no such channel
 * @param pulses how even the meter's pulses are
 * @param ampsVariation standard deviation of the single readings of the current over their mean
 */
public record SweptPoint(
        Leg leg,
        double percent,
        double duty,
        Uncertain flow,
        Uncertain voltsAtPins,
        Uncertain supplyAmps,
        Optional<Uncertain> pressure,
        PulseHealth pulses,
        double ampsVariation) {
    public SweptPoint {
        if (!(duty > 0)) {
            throw new IllegalArgumentException("a point at " + duty + " of full duty is not driven");
        }
    }

    Uncertain motorAmps() {
        return supplyAmps.times(1 / duty);
    }

    double effectiveVolts(double freewheelVolts) {
        return duty * voltsAtPins.value() - (1 - duty) * freewheelVolts;
    }
}
