package org.pumpwright.host.calibration;

import java.util.List;
import java.util.Locale;
import org.pumpwright.host.quantity.Require;

/**
 * A fitted polynomial of the share of full scale, {@code si = c0 + c1 x + c2 x^2 ...} with {@code x = code / 65536}. It holds
 * within the range that was fitted; outside, the value stays at the range's end and the sensor is in trouble: what a
 * polynomial does beyond its points is not known. The gain's share is of the distance from the value at the range's low end.
 * Thread-safe.
 *
 * @param coefficients 2 to 6, the constant first; the value must rise or fall all the way
 * @param sound the codes that were fitted
 * @param parts standard uncertainties
 */
public record Polynomial(List<Double> coefficients, CodeRange sound, UncertaintyParts parts) implements Calibration {
    /** Steps at which the curve must rise or fall: those of a 12-bit converter. */
    private static final int CHECKED_STEPS = 4096;

    /** Halvings that bring a range of 65536 codes below the resolution of a double. */
    private static final int HALVINGS = 60;

    public Polynomial {
        coefficients = List.copyOf(coefficients);
        Require.inRange("number of coefficients", coefficients.size(), 2, 6, "");
        coefficients.forEach(c -> Require.finite("coefficient", c));
        requireOneWay(coefficients, sound);
    }

    private static void requireOneWay(List<Double> coefficients, CodeRange sound) {
        double width = (sound.most() - sound.least()) / CHECKED_STEPS;
        double way = value(coefficients, sound.most()) - value(coefficients, sound.least());
        for (int i = 0; i < CHECKED_STEPS; i++) {
            double from = sound.least() + i * width;
            double change = value(coefficients, from + width) - value(coefficients, from);
            if (!(change * way > 0)) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "the polynomial turns or stands still at %.3f of full scale, it must rise or fall all the way",
                        from / FULL_SCALE));
            }
        }
    }

    @Override
    public String kind() {
        return "polynomial";
    }

    @Override
    public double si(double code) {
        return value(coefficients, sound.held(code));
    }

    @Override
    public double code(double si) {
        double low = sound.least();
        double high = sound.most();
        boolean rising = si(high) > si(low);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (si(middle) < si == rising) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    @Override
    public double siPerCode(double code) {
        double x = sound.held(code) / FULL_SCALE;
        double slope = 0;
        for (int i = coefficients.size() - 1; i > 0; i--) {
            slope = slope * x + i * coefficients.get(i);
        }
        return slope / FULL_SCALE;
    }

    @Override
    public double standardUncertainty(double si) {
        double gain = parts.gainShare() * (si - si(sound.least()));
        return parts.combined(gain, parts.stepCodes() * siPerCode(code(si)));
    }

    @Override
    public String lowWords() {
        return "the signal is below the range that was calibrated: wire off, shorted, or out of range";
    }

    @Override
    public String highWords() {
        return "the signal is above the range that was calibrated: wire off, shorted, or out of range";
    }

    /** By Horner's rule. */
    private static double value(List<Double> coefficients, double code) {
        double x = code / FULL_SCALE;
        double value = 0;
        for (int i = coefficients.size() - 1; i >= 0; i--) {
            value = value * x + coefficients.get(i);
        }
        return value;
    }
}
