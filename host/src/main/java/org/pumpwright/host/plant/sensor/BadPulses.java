package org.pumpwright.host.plant.sensor;

import java.util.Random;
import java.util.stream.DoubleStream;

/** What a broken meter makes of its edges. Confined to the plant's thread. */
final class BadPulses {

    private static final double DOUBLED_SHARE = 0.1;

    /** A second edge follows the first after this time, as from a bouncing reed contact. */
    private static final double ECHO_SECONDS = 0.001;

    private final SensorTrouble trouble;
    private final Random random;
    private boolean skipping;

    BadPulses(SensorTrouble trouble, Random random) {
        this.trouble = trouble;
        this.random = random;
    }

    double[] of(double[] edges, double stepSeconds) {
        return switch (trouble) {
            case STUCK, OPEN, SHORT -> new double[0];
            case NOISY -> doubled(edges, stepSeconds);
            case WRONG_SCALE -> DoubleStream.of(edges).filter(edge -> kept()).toArray();
        };
    }

    private boolean kept() {
        skipping = !skipping;
        return skipping;
    }

    /** An echo that would leave the step is pulled back to its end. */
    private double[] doubled(double[] edges, double stepSeconds) {
        return DoubleStream.of(edges)
                .flatMap(edge -> random.nextDouble() < DOUBLED_SHARE
                        ? DoubleStream.of(edge, Math.min(edge + ECHO_SECONDS, stepSeconds))
                        : DoubleStream.of(edge))
                .sorted()
                .toArray();
    }
}
