package org.pumpwright.host.ui.work;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.trace.Leg;

/**
 * A sweep while it is made, in SI units. Thread-safe.
 *
 * @param band the healthy range; empty where nothing is held against
 * @param dots what was measured, in the order of the run
 * @param now where the unit is at the moment; empty when it rests
 */
public record SweepView(List<Healthy> band, List<Dot> dots, Optional<Spot> now) {
    /** Nothing. */
    public static final SweepView EMPTY = new SweepView(List.of(), List.of(), Optional.empty());

    public SweepView {
        band = List.copyOf(band);
        dots = List.copyOf(dots);
    }

    /** The healthy range of flow at some effective volts, m3/s. */
    public record Healthy(double volts, double low, double mean, double high) {}

    /** Effective volts and the flow there, m3/s. */
    public record Spot(double volts, double flow) {}

    /** How a point lies, to look at; the verdict has its own numbers. */
    public enum Lies {
        INSIDE,
        NEAR,
        BELOW,
        ABOVE
    }

    /**
     * A measured point.
     *
     * @param spot where it is
     * @param half half the length of its error bar, m3/s
     * @param leg on which way it was measured
     * @param lies how it lies
     */
    public record Dot(Spot spot, double half, Leg leg, Lies lies) {}
}
