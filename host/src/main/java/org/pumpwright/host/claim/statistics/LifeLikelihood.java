package org.pumpwright.host.claim.statistics;

import java.util.List;

/**
 * Log likelihood of lives under Weibull's distribution {@code F(t) = 1 - exp(-(t/eta)^beta)}, failures exact, suspensions to the right
 * (J. F. Lawless, Statistical Models and Methods for Lifetime Data, 2nd ed., 2003, section 5.2; W. Q. Meeker and L. A. Escobar,
 * Statistical Methods for Reliability Data, 1998, chapter 8). Ages are divided by the greatest first, so that no unit of time
 * makes a sum run over. With beta and {@code c = beta ln eta} as its arguments the function is concave, hence each profile below has
 * one top and falls to both sides. Thread-safe.
 */
final class LifeLikelihood {
    private final double[] log;
    private final int[] count;
    private final double failures;
    private final double sumLogFailed;
    private final double logGreatest;

    LifeLikelihood(List<Life> lives) {
        double greatest = lives.stream().mapToDouble(Life::age).max().orElseThrow();
        logGreatest = StrictMath.log(greatest);
        log = lives.stream()
                .mapToDouble(life -> StrictMath.log(life.age() / greatest))
                .toArray();
        count = lives.stream().mapToInt(Life::count).toArray();
        double failed = 0;
        double sum = 0;
        for (int i = 0; i < log.length; i++) {
            if (lives.get(i).failed()) {
                failed += count[i];
                sum += count[i] * log[i];
            }
        }
        failures = failed;
        sumLogFailed = sum;
    }

    /** Whether some failure came before the greatest age; otherwise the likelihood grows with beta for ever. */
    boolean hasTop() {
        return failures > 0 && sumLogFailed < 0;
    }

    double bestBeta() {
        return FallingRoot.abovePositive(this::score);
    }

    /** Logarithm of the eta that suits this beta best, in the ages' own unit. */
    double logEta(double beta) {
        return logGreatest + StrictMath.log(sums(beta)[0] / failures) / beta;
    }

    /** Greatest log likelihood with this beta, in the ages' own unit. */
    double profileOfBeta(double beta) {
        return failures * (StrictMath.log(beta) + StrictMath.log(failures / sums(beta)[0]) - 1 - logGreatest)
                + (beta - 1) * sumLogFailed;
    }

    /**
     * Greatest log likelihood with this logarithm of the age by which the part p has failed; {@code reduced = ln(-ln(1 - p))},
     * which is 0 for eta.
     */
    double profileOfQuantile(double logAge, double reduced) {
        double y = logAge - logGreatest;
        double beta = FallingRoot.abovePositive(b -> slope(b, y, reduced));
        double lost = 0;
        for (int i = 0; i < log.length; i++) {
            lost += count[i] * StrictMath.exp(beta * (log[i] - y) + reduced);
        }
        return failures * (StrictMath.log(beta) - beta * y + reduced - logGreatest) + (beta - 1) * sumLogFailed - lost;
    }

    /** Slope of the profile of beta, a failure: falls from infinity to below nought. */
    private double score(double beta) {
        double[] sums = sums(beta);
        return 1 / beta + sumLogFailed / failures - sums[1] / sums[0];
    }

    private double slope(double beta, double y, double reduced) {
        double slope = failures / beta + sumLogFailed - failures * y;
        for (int i = 0; i < log.length; i++) {
            slope -= count[i] * (log[i] - y) * StrictMath.exp(beta * (log[i] - y) + reduced);
        }
        return slope;
    }

    private double[] sums(double beta) {
        double plain = 0;
        double withLog = 0;
        for (int i = 0; i < log.length; i++) {
            double power = count[i] * StrictMath.exp(beta * log[i]);
            plain += power;
            withLog += power * log[i];
        }
        return new double[] {plain, withLog};
    }
}
