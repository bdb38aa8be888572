package org.pumpwright.host.app.bucket;

import org.pumpwright.host.plant.MeterParameters;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;

/**
 * A simulated diverter, bucket and scale at a simulated stand: while the diverter is swung in, what flows past the meter fills the bucket. The
 * volume comes from the meter's own law, {@code Q = f / K_inf + lag}, so that the K that a test finds can be held against the truth. Confined
 * to one thread.
 */
final class SimulatedBench implements Plant {
    private static final double EMPTY_GRAMS = 900;
    private static final double STEP_GRAMS = 2;
    /** What a scale set with steel weights shows of a cubic metre of tap water of 20 degrees Celsius, kg. */
    private static final double SHOWN_KG_PER_M3 = 997.4;

    private final Plant unit;
    private final MeterParameters law;
    private final int meter;
    private boolean divertedIn;
    private double caughtM3;

    SimulatedBench(Plant unit, MeterParameters law, int meter) {
        this.unit = unit;
        this.law = law;
        this.meter = meter;
    }

    @Override
    public PlantReading step(double seconds, double[] duties, boolean contactorClosed) {
        PlantReading reading = unit.step(seconds, duties, contactorClosed);
        double[][] edges = reading.edgeOffsetsSeconds();
        if (divertedIn && meter < edges.length) {
            caughtM3 += edges[meter].length / law.pulsesPerM3AtInfiniteFlow() + law.lagM3PerSecond() * seconds;
        }
        return reading;
    }

    @Override
    public void adjust(String setting, double value) {
        unit.adjust(setting, value);
    }

    void swing(boolean into) {
        divertedIn = into;
    }

    /** The scale, to its step. */
    double shownGrams() {
        double grams = EMPTY_GRAMS + caughtM3 * SHOWN_KG_PER_M3 * 1000;
        return Math.round(grams / STEP_GRAMS) * STEP_GRAMS;
    }

    void empty() {
        caughtM3 = 0;
    }

    double litres() {
        return caughtM3 * 1000;
    }
}
