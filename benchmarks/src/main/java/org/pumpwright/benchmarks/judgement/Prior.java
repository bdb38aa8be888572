package org.pumpwright.benchmarks.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.Streams;

/**
 * Units as they come through the door (an invented mix): 55 % healthy; 45 % of which one parameter has moved until the flow at a
 * judged set point is 4 to 24 % less than the unit's own, evenly spread. As a distribution it is a mixture of normal ones, each
 * fitted to drawn units without a sensor. Thread-safe.
 */
final class Prior {
    static final double HEALTHY = 0.55;
    private static final double LEAST_LOSS = 0.04;
    private static final double MOST_LOSS = 0.24;
    private static final List<Mover> MOVERS =
            List.of(Mover.SLIP, Mover.DEAD_CHAMBER, Mover.DRAG, Mover.CONTACT, Mover.EARLY_BYPASS);

    private static final int BINS = 20;
    private static final int DRAWS = 120;
    private static final int HEALTHY_DRAWS = 1500;
    private static final int FIRST_UNIT = 3_000_000;
    private static final int BOX_DRAWS = 400;
    private static final double NEGLIGIBLE = 1e-4;
    private static final long MIX_STREAM = -501;
    private static final long BOX_STREAM = -502;

    private final List<Part> parts;

    private record Part(double weight, Normal normal) {}

    private Prior(List<Part> parts) {
        this.parts = parts;
    }

    /** The mix of a world, to which the world's own nominal values are known. */
    static Prior of(World world, Truth truth) {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(HEALTHY, healthy(world, truth)));
        double width = (MOST_LOSS - LEAST_LOSS) / BINS;
        for (Mover mover : MOVERS) {
            for (int bin = 0; bin < BINS; bin++) {
                List<double[]> draws = new ArrayList<>();
                for (int i = 0; i < DRAWS; i++) {
                    int unit = FIRST_UNIT + (BINS * mover.ordinal() + bin) * DRAWS + i;
                    double loss = LEAST_LOSS + width * (bin + (i + 0.5) / DRAWS);
                    lost(world.unit(unit), truth, mover, loss).ifPresent(p -> draws.add(truth.deviations(p)));
                }
                if (draws.size() > DRAWS / 2) {
                    double weight = (1 - HEALTHY) / MOVERS.size() / BINS;
                    parts.add(new Part(weight, Normal.of(draws)));
                }
            }
        }
        return new Prior(List.copyOf(parts));
    }

    static Normal healthy(World world, Truth truth) {
        List<double[]> healthy = new ArrayList<>();
        for (int i = 0; i < HEALTHY_DRAWS; i++) {
            healthy.add(truth.deviations(world.unit(FIRST_UNIT - 1 - i)));
        }
        return Normal.of(healthy);
    }

    /** One unit of the mix. */
    static PumpParameters unit(World world, Truth truth, int unit) {
        Random random = Streams.stream(world.number(), MIX_STREAM - 1000L * unit);
        PumpParameters healthy = world.unit(unit);
        if (random.nextDouble() < HEALTHY) {
            return healthy;
        }
        double loss = LEAST_LOSS + (MOST_LOSS - LEAST_LOSS) * random.nextDouble();
        int first = random.nextInt(MOVERS.size());
        for (int i = 0; i < MOVERS.size(); i++) {
            Mover mover = MOVERS.get((first + i) % MOVERS.size());
            Optional<PumpParameters> degraded = lost(healthy, truth, mover, loss);
            if (degraded.isPresent()) {
                return degraded.get();
            }
        }
        throw new IllegalStateException("no parameter takes %.0f %% of the flow".formatted(100 * loss));
    }

    private static Optional<PumpParameters> lost(PumpParameters healthy, Truth truth, Mover mover, double loss) {
        OptionalDouble way = Crossing.of(far -> truth.flowLost(healthy, mover.move(healthy, far)), loss, mover.most());
        return way.isPresent() ? Optional.of(mover.move(healthy, way.getAsDouble())) : Optional.empty();
    }

    /**
     * The probability that a unit truly lies outside its limits, of which these features were read: what the best possible
     * judge knows.
     *
     * @param noise covariance of the readings' errors
     */
    double outside(List<Judgement.Reading> readings, RealMatrix noise, long seed) {
        RealVector measured = MatrixUtils.createRealVector(
                readings.stream().mapToDouble(Judgement.Reading::deviation).toArray());
        double[] logs = new double[parts.size()];
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < logs.length; i++) {
            Part part = parts.get(i);
            logs[i] = Math.log(part.weight()) + part.normal().with(noise).logDensity(measured);
            best = Math.max(best, logs[i]);
        }
        double all = 0;
        double outside = 0;
        Random random = Streams.stream(seed, BOX_STREAM);
        for (int i = 0; i < logs.length; i++) {
            double weight = Math.exp(logs[i] - best);
            all += weight;
            if (weight > NEGLIGIBLE) {
                outside += weight * shareOutside(parts.get(i).normal().given(measured, noise), readings, random);
            }
        }
        return outside / all;
    }

    private static double shareOutside(Normal left, List<Judgement.Reading> readings, Random random) {
        RealMatrix root = left.root();
        int outside = 0;
        for (int i = 0; i < BOX_DRAWS; i++) {
            RealVector draw = left.draw(root, random);
            boolean inside = true;
            for (int k = 0; k < readings.size(); k++) {
                double high = readings.get(k).limits().high()
                                / readings.get(k).limits().centre()
                        - 1;
                double low = readings.get(k).limits().low()
                                / readings.get(k).limits().centre()
                        - 1;
                inside &= draw.getEntry(k) >= low && draw.getEntry(k) <= high;
            }
            outside += inside ? 0 : 1;
        }
        return (double) outside / BOX_DRAWS;
    }
}
