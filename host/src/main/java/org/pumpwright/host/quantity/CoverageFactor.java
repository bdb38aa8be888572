package org.pumpwright.host.quantity;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** By how much a standard uncertainty is widened to an interval of a stated level (JCGM 100, annex G). Thread-safe. */
public final class CoverageFactor {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    /** Beyond this many degrees of freedom the normal distribution is as good, to seven digits. */
    private static final double PRACTICALLY_NORMAL = 1e8;

    private CoverageFactor() {}

    /**
     * The factor k of a two-sided interval: Student's t for finite degrees of freedom, which need not be whole, and the
     * normal distribution's for infinite ones. Published tables go down to the next whole degrees of freedom (JCGM 100,
     * G.4.1); who wants their figure gives the floor.
     *
     * @param level of confidence, 0.5 to 0.9999
     * @param degreesOfFreedom 1 or more
     */
    public static double of(double level, double degreesOfFreedom) {
        Require.inRange("level of confidence", level, 0.5, 0.9999, "");
        Require.inRange("degrees of freedom", degreesOfFreedom, 1, Double.POSITIVE_INFINITY, "");
        double upTo = (1 + level) / 2;
        return degreesOfFreedom > PRACTICALLY_NORMAL
                ? NORMAL.inverseCumulativeProbability(upTo)
                : new TDistribution(degreesOfFreedom).inverseCumulativeProbability(upTo);
    }
}
