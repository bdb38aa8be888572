package org.pumpwright.host.plant.sensor;

import java.util.Random;

/** What a broken analog sensor makes of the truth. Confined to the plant's thread. */
final class BadReading {

    private static final double ZERO_CELSIUS_KELVIN = 273.15;
    private static final double NOISE_SHARE = 0.05;

    private final BadSensor bad;
    private final Random random;
    private double first = Double.NaN;

    BadReading(BadSensor bad, Random random) {
        this.bad = bad;
        this.random = random;
    }

    double of(double right) {
        if (Double.isNaN(first)) {
            first = right;
        }
        SensorChannel channel = bad.channel();
        return switch (bad.trouble()) {
            case STUCK -> first;
            case OPEN -> channel.open();
            case SHORT -> channel.shorted();
            case NOISY -> right + NOISE_SHARE * channel.span() * random.nextGaussian();
            case WRONG_SCALE -> halved(right);
        };
    }

    private double halved(double right) {
        double zero = bad.channel() == SensorChannel.TEMPERATURE ? ZERO_CELSIUS_KELVIN : 0;
        return zero + (right - zero) / 2;
    }
}
