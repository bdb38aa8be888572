package org.pumpwright.host.claim.statistics;

import org.hipparchus.distribution.IntegerDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.distribution.discrete.PoissonDistribution;

/** How likely chance alone gives so many or more; exact, no normal curve in it, to about 1e-15. Thread-safe. */
public final class UpperTail {
    private UpperTail() {}

    /**
     * So many or more events where so many are expected (Poisson).
     *
     * @param expected above 0
     * @param atLeast 0 or more
     */
    public static double poisson(double expected, int atLeast) {
        return beyond(new PoissonDistribution(expected), atLeast);
    }

    /**
     * So many or more of so many where each is so with this probability (binomial).
     *
     * @param of 0 or more
     * @param probability 0 to 1
     * @param atLeast 0 or more
     */
    public static double binomial(int of, double probability, int atLeast) {
        return beyond(new BinomialDistribution(of, probability), atLeast);
    }

    private static double beyond(IntegerDistribution distribution, int atLeast) {
        return atLeast == 0 ? 1 : Math.max(0, 1 - distribution.cumulativeProbability(atLeast - 1));
    }
}
