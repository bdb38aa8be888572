package org.pumpwright.host.claim.statistics;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Weibull's distribution fitted to lives by maximum likelihood, with 95 % intervals by profile likelihood: all values whose best log
 * likelihood falls short of the best of all by no more than half of 3.84, the 95 % point of chi-square with one degree of freedom
 * (W. Q. Meeker and L. A. Escobar, Statistical Methods for Reliability Data, 1998, section 8.3). Thread-safe.
 *
 * @param beta shape: below 1 early life, about 1 random, above 1 wear
 * @param betaInterval 95 %
 * @param eta characteristic life, by which 63.2 % have failed, in the ages' unit
 * @param etaInterval 95 %
 * @param b10 life by which 10 % have failed, in the ages' unit
 * @param b10Interval 95 %
 * @param logLikelihood at its top, natural logarithm, in the ages' unit
 */
public record WeibullFit(
        double beta,
        Interval betaInterval,
        double eta,
        Interval etaInterval,
        double b10,
        Interval b10Interval,
        double logLikelihood) {
    private static final double DROP = new ChiSquaredDistribution(1).inverseCumulativeProbability(Interval.LEVEL) / 2;

    /** {@code ln(-ln(1 - 0.1))}. */
    private static final double REDUCED_B10 = StrictMath.log(-StrictMath.log1p(-0.1));

    private static final double FIRST_STEP = 0.1;

    /**
     * Fits.
     *
     * @param lives of one failure mode: everything that did not fail of it is a suspension
     * @throws IllegalArgumentException when there is no failure, or every failure is at the greatest age of all; then no beta is
     *     the best one
     */
    public static WeibullFit of(List<Life> lives) {
        LifeLikelihood likelihood = likelihood(lives);
        double beta = likelihood.bestBeta();
        double logEta = likelihood.logEta(beta);
        double logB10 = logEta + REDUCED_B10 / beta;
        double top = likelihood.profileOfBeta(beta);
        return new WeibullFit(
                beta,
                ofBeta(likelihood, beta, top),
                StrictMath.exp(logEta),
                ofQuantile(likelihood, logEta, 0, top),
                StrictMath.exp(logB10),
                ofQuantile(likelihood, logB10, REDUCED_B10, top),
                top);
    }

    /** Whether a best beta exists for these lives. */
    static boolean exists(List<Life> lives) {
        return !lives.isEmpty() && new LifeLikelihood(lives).hasTop();
    }

    private static LifeLikelihood likelihood(List<Life> lives) {
        if (!exists(lives)) {
            throw new IllegalArgumentException(
                    "no failure before the greatest age: no Weibull distribution is the best one for these lives");
        }
        return new LifeLikelihood(lives);
    }

    private static Interval ofBeta(LifeLikelihood likelihood, double beta, double top) {
        double log = StrictMath.log(beta);
        return ends(b -> likelihood.profileOfBeta(StrictMath.exp(b)), log, top);
    }

    private static Interval ofQuantile(LifeLikelihood likelihood, double log, double reduced, double top) {
        return ends(y -> likelihood.profileOfQuantile(y, reduced), log, top);
    }

    private static Interval ends(DoubleUnaryOperator profile, double log, double top) {
        DoubleUnaryOperator above = x -> profile.applyAsDouble(x) - top + DROP;
        return new Interval(
                StrictMath.exp(FallingRoot.away(above, log, -FIRST_STEP)),
                StrictMath.exp(FallingRoot.away(above, log, FIRST_STEP)));
    }
}
