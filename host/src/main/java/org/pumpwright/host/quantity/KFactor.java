package org.pumpwright.host.quantity;

/**
 * A pulse meter's pulses per volume. Thread-safe.
 *
 * @param pulsesPerM3 above 0
 */
public record KFactor(double pulsesPerM3) {
    public KFactor {
        Require.inRange("K-factor", pulsesPerM3, Double.MIN_NORMAL, 1e12, "pulses/m3");
    }

    public static KFactor ofPulsesPerUsGallon(double pulses) {
        return new KFactor(pulses / Volume.M3_PER_US_GALLON);
    }

    public double pulsesPerUsGallon() {
        return pulsesPerM3 * Volume.M3_PER_US_GALLON;
    }

    public double pulsesPerLitre() {
        return pulsesPerM3 / 1000;
    }

    /** The flow at which the meter gives this many pulses per second: {@code Q = f / K}. */
    public FlowRate flowAt(double hertz) {
        return new FlowRate(hertz / pulsesPerM3);
    }
}
