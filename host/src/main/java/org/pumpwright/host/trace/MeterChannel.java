package org.pumpwright.host.trace;

import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * One pulse meter of a stand and its calibration. Thread-safe.
 *
 * @param index the meter's number on the board, 0 or 1
 * @param k pulses per volume, one figure or a table over the flow
 * @param relativeUncertainty standard uncertainty of K as a share of it, common to all flows
 * @param least the lowest flow at which K holds
 * @param certificate what stands behind the calibration
 */
public record MeterChannel(int index, KCurve k, double relativeUncertainty, FlowRate least, Certificate certificate) {
    public MeterChannel {
        Require.inRange("meter", index, 0, 1, "");
        Require.inRange("relative uncertainty of K", relativeUncertainty, 0, 1, "");
    }

    /** The flow at which the meter gives this many pulses per second. */
    public FlowRate flow(double hertz) {
        return k.flowAt(hertz);
    }

    /**
     * The flow, m3/s, of a measured frequency, Hz. Frequency and K are independent: with {@code f = Q K(Q)} a share of K counts
     * as the same share of the frequency, and both are carried by {@code dQ/df} (JCGM 100, 5.1.2).
     */
    public Uncertain flow(Uncertain hertz) {
        FlowRate flow = flow(hertz.value());
        double perHertz = k.flowPerHertz(flow);
        return new Uncertain(flow.m3PerSecond(), hertz.standardUncertainty() * perHertz, hertz.degreesOfFreedom())
                .with(relativeUncertainty * hertz.value() * perHertz, Double.POSITIVE_INFINITY);
    }
}
