package org.pumpwright.host.calibration;

import org.pumpwright.host.quantity.Require;

/**
 * A straight line over a converter's whole scale: {@code si = atZero + span * code / 65536}. The gain's share is of the
 * distance from the value at code 0. Thread-safe.
 *
 * @param atZero value at code 0
 * @param span value at full scale less value at code 0, not 0
 * @param parts standard uncertainties
 * @param sound codes that a sound sensor gives
 */
public record StraightLine(double atZero, double span, UncertaintyParts parts, CodeRange sound) implements Calibration {
    public StraightLine {
        Require.finite("value at zero", atZero);
        Require.finite("span", span);
        if (span == 0) {
            throw new IllegalArgumentException("the span of a straight line is 0, it must not be");
        }
    }

    @Override
    public String kind() {
        return "straight line";
    }

    @Override
    public double si(double code) {
        return atZero + span * code / FULL_SCALE;
    }

    @Override
    public double code(double si) {
        return (si - atZero) / span * FULL_SCALE;
    }

    @Override
    public double siPerCode(double code) {
        return span / FULL_SCALE;
    }

    @Override
    public double standardUncertainty(double si) {
        return parts.combined(parts.gainShare() * (si - atZero), parts.stepCodes() * siPerCode(0));
    }

    @Override
    public String lowWords() {
        return "the signal is below what the sensor can give: no supply, wire off or shorted";
    }

    @Override
    public String highWords() {
        return "the signal is above what the sensor can give: wire off or shorted to the supply";
    }
}
