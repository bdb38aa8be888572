package org.pumpwright.host.rule;

import org.pumpwright.host.quantity.Require;

/**
 * How far a point may be corrected and still be judged; beyond, it is shown for information. Thread-safe.
 *
 * @param voltsShare volts at the pins against the stand's supply
 * @param nozzleShare the nozzle found against the stand's
 * @param totalShare all corrections of a point together
 * @param warmUpSeconds how long after the first drive motor amps are judged
 * @param source where they stand
 */
public record CorrectionLimits(
        double voltsShare, double nozzleShare, double totalShare, double warmUpSeconds, Source source) {
    /** 8 % volts, 10 % nozzle, 10 % in all, and no limit of time. */
    public static final CorrectionLimits STANDARD =
            new CorrectionLimits(0.08, 0.10, 0.10, Double.POSITIVE_INFINITY, Source.PROGRAM);

    public CorrectionLimits {
        Require.inRange("volts correction", voltsShare, 0, 1, "");
        Require.inRange("nozzle correction", nozzleShare, 0, 1, "");
        Require.inRange("total correction", totalShare, 0, 1, "");
        Require.inRange("warm-up window", warmUpSeconds, 0, Double.POSITIVE_INFINITY, "s");
    }
}
