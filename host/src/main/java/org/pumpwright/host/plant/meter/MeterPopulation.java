package org.pumpwright.host.plant.meter;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.pumpwright.host.plant.MeterParameters;
import org.pumpwright.host.plant.Streams;

/**
 * Healthy meters that differ as uncalibrated units of one model do: K 1.2 %, lag 40 %, start 20 %, blade pattern 20 %
 * (one standard deviation, log-normal, assumed); of an electromagnetic meter K 0.5 % and the zero by its own size. Unit
 * {@code i} of a seed is always the same unit. Thread-safe.
 */
public final class MeterPopulation {

    private static final double K_SPREAD = 0.012;
    private static final double WIDEST_PATTERN = 0.08;

    private final ReturnedMeter model;
    private final long seed;

    /** The population of a model and a seed. */
    public MeterPopulation(ReturnedMeter model, long seed) {
        this.model = model;
        this.seed = seed;
    }

    /**
     * One meter.
     *
     * @throws IllegalArgumentException when the number is negative
     */
    public ReturnedMeter unit(int number) {
        if (number < 0) {
            throw new IllegalArgumentException("unit number " + number + " is below 0");
        }
        Random random = Streams.stream(seed, number);
        if (model.sensor() instanceof FlowSensor.Rotor rotor) {
            return model.withSensor(new FlowSensor.Rotor(spread(rotor.parameters(), random)));
        }
        EmParameters em = ((FlowSensor.Electromagnetic) model.sensor()).parameters();
        double zero = em.zeroM3PerSecond() * random.nextGaussian();
        return model.withRatio(spread(1, 0.005, random))
                .withSensor(new FlowSensor.Electromagnetic(em.withZeroAndNoise(zero, em.noiseM3PerSecond())));
    }

    /** The first meters of the population. */
    public List<ReturnedMeter> units(int count) {
        return IntStream.range(0, count).mapToObj(this::unit).toList();
    }

    private static MeterParameters spread(MeterParameters m, Random random) {
        double lag = spread(m.lagM3PerSecond(), 0.40, random);
        return new MeterParameters(
                spread(m.pulsesPerM3AtInfiniteFlow(), K_SPREAD, random),
                lag,
                Math.max(lag, spread(m.startM3PerSecond(), 0.20, random)),
                m.blades(),
                Math.min(WIDEST_PATTERN, spread(m.bladePatternRelative(), 0.20, random)),
                m.edgeJitterRelative(),
                m.slugVolumeM3());
    }

    /** StrictMath, so that every machine draws the same units to the bit. */
    private static double spread(double median, double logSigma, Random random) {
        return median * StrictMath.exp(logSigma * random.nextGaussian());
    }
}
