package org.pumpwright.host.calibrate;

import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.quantity.Require;

/**
 * The scale under the bucket. Thread-safe.
 *
 * @param certificate of its calibration
 * @param expandedKg expanded uncertainty on that certificate
 * @param coverage the factor k that goes with it, 1 to 4
 * @param linearityKg linearity and eccentricity: off by at most this, either way, anywhere on the pan and in the range
 * @param resolutionKg one step of the display
 * @param driftKg of the zero between tare and gross: at most this, either way
 * @param capacityKg largest load
 */
public record Scale(
        Certificate certificate,
        double expandedKg,
        double coverage,
        double linearityKg,
        double resolutionKg,
        double driftKg,
        double capacityKg) {
    public Scale {
        Require.inRange("uncertainty of the scale", expandedKg, 0, 100, "kg");
        Require.inRange("coverage factor of the scale", coverage, 1, 4, "");
        Require.inRange("linearity of the scale", linearityKg, 0, 100, "kg");
        Require.inRange("resolution of the scale", resolutionKg, 0, 10, "kg");
        Require.inRange("zero drift of the scale", driftKg, 0, 100, "kg");
        Require.inRange("capacity of the scale", capacityKg, 0.1, 10_000, "kg");
    }
}
