package org.pumpwright.host.calibration;

import org.pumpwright.host.quantity.Require;

/**
 * The standard uncertainties (k = 1) of one calibration, independent of each other (JCGM 100, 4.3 and 5.1.2). Thread-safe.
 *
 * @param gainShare of the gain, as a share; what it is a share of is told by each kind of calibration
 * @param offset of the zero, in the SI unit of the value
 * @param fit residual of the fitted curve, in the SI unit of the value; 0 where nothing was fitted
 * @param stepCodes width of one step of the converter in codes; 0 where {@code offset} holds the steps already
 */
public record UncertaintyParts(double gainShare, double offset, double fit, double stepCodes) {
    public UncertaintyParts {
        Require.inRange("relative uncertainty", gainShare, 0, 1, "");
        Require.inRange("offset uncertainty", offset, 0, Double.MAX_VALUE, "");
        Require.inRange("uncertainty of the fit", fit, 0, Double.MAX_VALUE, "");
        Require.inRange("step of the converter", stepCodes, 0, Calibration.FULL_SCALE / 2, "codes");
    }

    /** Gain and zero only. */
    public static UncertaintyParts of(double gainShare, double offset) {
        return new UncertaintyParts(gainShare, offset, 0, 0);
    }

    /** The step of a left-justified converter with this many bits. */
    public static double stepOfBits(int bits) {
        Require.inRange("converter", bits, 1, 16, "bits");
        return Calibration.FULL_SCALE / (1 << bits);
    }

    /**
     * All parts in quadrature. A reading lies anywhere within its step: rectangular, step over root 12 (JCGM 100, 4.3.7).
     *
     * @param gain what the gain part comes to, in the SI unit
     * @param step one step of the converter, in the SI unit
     */
    double combined(double gain, double step) {
        return Math.hypot(Math.hypot(gain, offset), Math.hypot(fit, step / Math.sqrt(12)));
    }
}
