package org.pumpwright.host.grade;

import org.pumpwright.host.grade.FeatureJudgement.Decision;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * Guard-banded acceptance and rejection (JCGM 106:2012, 8.3): inside only when inside by the guard, outside only when
 * outside by the guard. Both sides are treated alike, so neither the customer nor the maker carries the doubt.
 * Thread-safe.
 *
 * @param factor the guard over the standard uncertainty
 */
public record GuardBand(double factor) {
    /** One-sided risk of at most 5 % for a unit exactly at a limit: the 95 % point of the normal distribution. */
    public static final GuardBand STANDARD = new GuardBand(1.645);

    public GuardBand {
        Require.inRange("guard factor", factor, 0, 10, "");
    }

    /** The guard of a measured value, in its unit. */
    public double width(Uncertain measured) {
        return factor * measured.standardUncertainty();
    }

    /** Where a measured value lies; an open side is never near. Within the guard of both limits, the
     * nearer one is named. */
    public Decision decide(Uncertain measured, Limits limits) {
        double guard = width(measured);
        double aboveLow = measured.value() - limits.low();
        double belowHigh = limits.high() - measured.value();
        if (aboveLow < -guard) {
            return Decision.LOW;
        }
        if (belowHigh < -guard) {
            return Decision.HIGH;
        }
        if (Math.min(aboveLow, belowHigh) >= guard) {
            return Decision.INSIDE;
        }
        return aboveLow <= belowHigh ? Decision.NEAR_LOW : Decision.NEAR_HIGH;
    }
}
