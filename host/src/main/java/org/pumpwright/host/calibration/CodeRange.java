package org.pumpwright.host.calibration;

import org.pumpwright.host.quantity.Require;

/**
 * The raw readings that a sound sensor can give, both ends included. Thread-safe.
 *
 * @param least lowest code
 * @param most highest code, above {@code least}
 */
public record CodeRange(double least, double most) {
    /** Nothing can be told from the code: every reading of a left-justified converter may be true. */
    public static final CodeRange WHOLE = new CodeRange(0, Calibration.FULL_SCALE);

    public CodeRange {
        Require.finite("lowest sound code", least);
        Require.finite("highest sound code", most);
        if (!(least < most)) {
            throw new IllegalArgumentException(
                    "sound codes run from %s to %s, the first must be below the second".formatted(least, most));
        }
    }

    /** A range of a left-justified converter, as shares of its full scale from 0 to 1. */
    public static CodeRange ofShares(double least, double most) {
        Require.inRange("lowest share of full scale", least, 0, 1, "");
        Require.inRange("highest share of full scale", most, 0, 1, "");
        return new CodeRange(least * Calibration.FULL_SCALE, most * Calibration.FULL_SCALE);
    }

    /** The code itself, or the end of the range that is nearer to it. */
    double held(double code) {
        return Math.max(least, Math.min(most, code));
    }
}
