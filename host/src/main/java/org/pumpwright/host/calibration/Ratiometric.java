package org.pumpwright.host.calibration;

import org.pumpwright.host.quantity.Require;

/**
 * A sensor that gives a share of its own supply, usually 10 % to 90 % of it (0.5 V to 4.5 V of 5 V), read by a converter whose
 * reference is that same supply: the value depends on the share alone and the supply's error cancels,
 * {@code si = siAtLow + (siAtHigh - siAtLow) (code/65536 - lowShare) / (highShare - lowShare)}. A sound sensor never goes to
 * the rails, so a broken wire or a short can be told. The gain's share is of the distance from the value at the low end.
 * Thread-safe.
 *
 * @param lowShare share of the supply at the low end
 * @param highShare share of the supply at the high end, above {@code lowShare}
 * @param siAtLow value at the low end
 * @param siAtHigh value at the high end, not {@code siAtLow}
 * @param parts standard uncertainties
 * @param sound codes that a sound sensor gives
 */
public record Ratiometric(
        double lowShare, double highShare, double siAtLow, double siAtHigh, UncertaintyParts parts, CodeRange sound)
        implements Calibration {
    public Ratiometric {
        Require.inRange("low share of the supply", lowShare, 0, 1, "");
        Require.inRange("high share of the supply", highShare, 0, 1, "");
        Require.finite("value at the low end", siAtLow);
        Require.finite("value at the high end", siAtHigh);
        if (!(lowShare < highShare)) {
            throw new IllegalArgumentException("the sensor's low end is %s of the supply, its high end %s, not above it"
                    .formatted(lowShare, highShare));
        }
        if (siAtLow == siAtHigh) {
            throw new IllegalArgumentException("the sensor has the value %s at both ends".formatted(siAtLow));
        }
        if (sound.least() > lowShare * FULL_SCALE || sound.most() < highShare * FULL_SCALE) {
            throw new IllegalArgumentException(
                    "the sensor works from %s to %s of the supply, but is taken for broken outside %s to %s"
                            .formatted(lowShare, highShare, sound.least() / FULL_SCALE, sound.most() / FULL_SCALE));
        }
    }

    /**
     * The codes beyond which a wire must be off or shorted: half-way from the sensor's ends to the rails, for 0.5 V to 4.5 V of
     * 5 V below 0.25 V and above 4.75 V (common practice, no source).
     */
    public static CodeRange halfWayToTheRails(double lowShare, double highShare) {
        return CodeRange.ofShares(lowShare / 2, (1 + highShare) / 2);
    }

    @Override
    public String kind() {
        return "ratiometric";
    }

    @Override
    public double si(double code) {
        return siAtLow + (code / FULL_SCALE - lowShare) * siPerShare();
    }

    @Override
    public double code(double si) {
        return ((si - siAtLow) / siPerShare() + lowShare) * FULL_SCALE;
    }

    @Override
    public double siPerCode(double code) {
        return siPerShare() / FULL_SCALE;
    }

    @Override
    public double standardUncertainty(double si) {
        return parts.combined(parts.gainShare() * (si - siAtLow), parts.stepCodes() * siPerCode(0));
    }

    private double siPerShare() {
        return (siAtHigh - siAtLow) / (highShare - lowShare);
    }

    @Override
    public String lowWords() {
        return "the sensor's signal is at its minus: wire off, no supply, or shorted";
    }

    @Override
    public String highWords() {
        return "the sensor's signal is at its supply: minus wire off, or shorted";
    }
}
