package org.pumpwright.host.curve;

import org.pumpwright.host.quantity.Require;

/**
 * What the spread of one quantity at one point of a curve is made of. Thread-safe.
 *
 * @param unitSpread standard deviation between units, as a share of the mean
 * @param runSpread standard deviation between runs of one unit, as a share of the mean; 0 when no unit was run twice
 * @param meanUncertainty standard uncertainty of the mean, as a share of it
 * @param degreesOfFreedom behind the standard deviation of one new run of a new unit
 * @param toleranceFactor two-sided factor of this quantity alone, for 95 % of units with 95 % confidence
 */
public record SpreadParts(
        double unitSpread, double runSpread, double meanUncertainty, double degreesOfFreedom, double toleranceFactor) {
    static final double COVERAGE = 0.95;
    static final double CONFIDENCE = 0.95;

    public SpreadParts {
        Require.inRange("spread between units", unitSpread, 0, 1, "of the mean");
        Require.inRange("spread between runs", runSpread, 0, 1, "of the mean");
        Require.inRange("uncertainty of the mean", meanUncertainty, 0, 1, "of the mean");
        Require.inRange("degrees of freedom", degreesOfFreedom, 0.5, 100_000, "");
        Require.inRange("tolerance factor", toleranceFactor, 1, 1000, "");
    }

    static SpreadParts of(VarianceComponents components) {
        double mean = components.mean();
        return new SpreadParts(
                Math.sqrt(components.unitVariance()) / mean,
                Math.sqrt(components.runVariance()) / mean,
                components.meanUncertainty() / mean,
                components.degreesOfFreedom(),
                ToleranceFactor.twoSided(
                        components.effectiveUnits(), components.degreesOfFreedom(), COVERAGE, CONFIDENCE));
    }
}
