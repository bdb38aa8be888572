package org.pumpwright.host.calibrate;

import org.pumpwright.host.quantity.Budget;
import org.pumpwright.host.quantity.CoverageFactor;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Uncertain;

/**
 * A K-factor with its uncertainty. Thread-safe.
 *
 * @param k the estimate
 * @param standardShare combined standard uncertainty as a share of k
 * @param degreesOfFreedom the effective ones behind it (JCGM 100, G.4.1)
 * @param coverage factor k at the level: of Student's distribution, for degrees of freedom that need not be whole, or less where
 *     an error with hard ends makes the greater part
 * @param level of confidence
 */
public record Stated(KFactor k, double standardShare, double degreesOfFreedom, double coverage, double level) {
    static Stated of(Combined combined, double level) {
        Budget budget = combined.budget();
        return new Stated(
                new KFactor(budget.value()),
                budget.standardUncertainty() / budget.value(),
                budget.degreesOfFreedom(),
                combined.coverage(level),
                level);
    }

    static Stated of(KFactor k, Uncertain relative, double level) {
        double freedom = relative.degreesOfFreedom();
        return new Stated(k, relative.standardUncertainty(), freedom, CoverageFactor.of(level, freedom), level);
    }

    /** Half of the stated interval, as a share of k. */
    public double expandedShare() {
        return coverage * standardShare;
    }

    public double expandedPulsesPerM3() {
        return expandedShare() * k.pulsesPerM3();
    }

    /** Whether a K lies in the stated interval. */
    public boolean holds(KFactor other) {
        return Math.abs(other.pulsesPerM3() - k.pulsesPerM3()) <= expandedPulsesPerM3();
    }
}
