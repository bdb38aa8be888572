package org.pumpwright.host.grade.finding;

import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;

/** A plant to order: pulses, amps and pressure are functions of time and duty, with seeded jitter and noise. */
final class MadePlant implements Plant {
    private static final double JITTER_SHARE = 0.015;
    private static final double FEED_OHMS = 0.05;
    private static final double SUPPLY_VOLTS = 13.8;

    private final Random random;
    private DoubleBinaryOperator hertz = (seconds, duty) -> 0;
    private DoubleBinaryOperator amps = (seconds, duty) -> 0;
    private DoubleBinaryOperator pascals = (seconds, duty) -> 0;
    private double now;
    private double phase;

    MadePlant(long seed) {
        random = new Random(seed);
    }

    MadePlant hertz(DoubleBinaryOperator ofTimeAndDuty) {
        hertz = ofTimeAndDuty;
        return this;
    }

    MadePlant amps(DoubleBinaryOperator ofTimeAndDuty) {
        amps = ofTimeAndDuty;
        return this;
    }

    MadePlant pascals(DoubleBinaryOperator ofTimeAndDuty) {
        pascals = ofTimeAndDuty;
        return this;
    }

    @Override
    public PlantReading step(double seconds, double[] duties, boolean contactorClosed) {
        double middle = now + seconds / 2;
        double pulses = hertz.applyAsDouble(middle, duties[0]) * seconds;
        double to = phase + pulses;
        int count = (int) (Math.floor(to) - Math.floor(phase));
        double[] edges = new double[count];
        for (int i = 0; i < count; i++) {
            double at = (Math.floor(phase) + 1 + i - phase) / pulses * seconds;
            double strayed = at + JITTER_SHARE * random.nextGaussian() * seconds / pulses;
            double after = i == 0 ? 0 : edges[i - 1] + 1e-6;
            edges[i] = Math.max(after, Math.min(seconds - 1e-6, strayed));
        }
        phase = to;
        now += seconds;
        double current = amps.applyAsDouble(middle, duties[0]);
        return new PlantReading(
                new double[][] {edges, {}},
                SUPPLY_VOLTS - FEED_OHMS * current + 0.01 * random.nextGaussian(),
                current + 0.04 * random.nextGaussian(),
                pascals.applyAsDouble(middle, duties[0]) + 500 * random.nextGaussian(),
                293.15);
    }
}
