package org.pumpwright.host.calibrate;

import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.quantity.Require;

/**
 * A master meter in series with the one under test, counted over the same time. Thread-safe.
 *
 * @param certificate of its calibration
 * @param k its K-factor
 * @param expandedShare expanded uncertainty of that K as a share
 * @param coverage the factor k that goes with it, 1 to 4
 * @param driftShare its K has moved since by at most this share, either way
 * @param range flows at which it may be used
 */
public record Comparing(
        Certificate certificate, KCurve k, double expandedShare, double coverage, double driftShare, FlowRange range)
        implements Method {
    public Comparing {
        Require.inRange("uncertainty of the master meter", expandedShare, 0, 0.2, "");
        Require.inRange("coverage factor of the master meter", coverage, 1, 4, "");
        Require.inRange("drift of the master meter", driftShare, 0, 0.2, "");
    }

    @Override
    public String words() {
        return "master meter in series";
    }
}
