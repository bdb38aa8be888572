package org.pumpwright.host.grade;

import org.pumpwright.host.curve.Band;
import org.pumpwright.host.quantity.Uncertain;

/**
 * One feature, its limits and the decision. Units are the feature's own SI units. Thread-safe.
 *
 * @param feature what was judged
 * @param effectiveVolts where on the curve, V
 * @param measured with its standard uncertainty, the curve's slope times the uncertainty of the volts included
 * @param limits the healthy range there
 * @param guard how far inside a limit a feature must lie to pass, and outside to fail
 * @param decision the decision by the guard
 * @param judged false for points that are shown for information only
 */
public record FeatureJudgement(
        Feature feature,
        double effectiveVolts,
        Uncertain measured,
        Band limits,
        double guard,
        Decision decision,
        boolean judged) {

    /** What the guard-banded comparison says, and on which side. */
    public enum Decision {
        INSIDE,
        LOW,
        HIGH,
        /** Within the guard of the lower limit, on either side of it. */
        NEAR_LOW,
        /** Within the guard of the upper limit, on either side of it. */
        NEAR_HIGH
    }

    /** Measured less centre of the healthy range, as a share of the centre. */
    public double deviation() {
        return (measured.value() - limits.centre()) / limits.centre();
    }

    public boolean failed() {
        return decision == Decision.LOW || decision == Decision.HIGH;
    }

    public boolean near() {
        return decision == Decision.NEAR_LOW || decision == Decision.NEAR_HIGH;
    }
}
