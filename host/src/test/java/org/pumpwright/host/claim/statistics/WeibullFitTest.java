package org.pumpwright.host.claim.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.special.Gamma;
import org.junit.jupiter.api.Test;

/** The fit against a published example, against its own definition worked out another way, and by what must not change it. */
final class WeibullFitTest {
    /** NIST/SEMATECH e-Handbook of Statistical Methods, section 8.4.1.3: 20 units on test, 10 still running at 500 hours. */
    private static final List<Life> HANDBOOK = handbook();

    @Test
    void theExampleOfTheNistHandbookIsFound() {
        WeibullFit fit = WeibullFit.of(HANDBOOK);

        assertThat(fit.beta()).isCloseTo(1.7208, within(0.00005));
        assertThat(fit.eta()).isCloseTo(606.5280, within(0.0005));
        assertThat(fit.logLikelihood()).isCloseTo(-75.135, within(0.0005));
        assertThat(fit.eta() * Math.exp(Gamma.logGamma(1 + 1 / fit.beta()))).isCloseTo(540.737, within(0.005));
    }

    /** A coarse-to-fine search over both parameters, by the plain formula of the likelihood. */
    @Test
    void theEndsOfTheIntervalsAreWhereABruteSearchLosesHalfOfChiSquare() {
        WeibullFit fit = WeibullFit.of(HANDBOOK);
        double drop = new ChiSquaredDistribution(1).inverseCumulativeProbability(0.95) / 2;

        for (double beta : List.of(fit.betaInterval().low(), fit.betaInterval().high())) {
            double best = highest(logEta -> logLikelihood(beta, Math.exp(logEta)), 4, 12);
            assertThat(fit.logLikelihood() - best).isCloseTo(drop, within(1e-6));
        }
        for (double eta : List.of(fit.etaInterval().low(), fit.etaInterval().high())) {
            double best = highest(logBeta -> logLikelihood(Math.exp(logBeta), eta), -3, 3);
            assertThat(fit.logLikelihood() - best).isCloseTo(drop, within(1e-6));
        }
        for (double b10 : List.of(fit.b10Interval().low(), fit.b10Interval().high())) {
            double best = highest(logBeta -> withB10(Math.exp(logBeta), b10), -3, 3);
            assertThat(fit.logLikelihood() - best).isCloseTo(drop, within(1e-6));
        }
    }

    @Test
    void atB10OneInTenHasFailed() {
        WeibullFit fit = WeibullFit.of(HANDBOOK);

        assertThat(1 - Math.exp(-Math.pow(fit.b10() / fit.eta(), fit.beta()))).isCloseTo(0.1, within(1e-12));
        assertThat(fit.betaInterval().holds(fit.beta())).isTrue();
        assertThat(fit.etaInterval().holds(fit.eta())).isTrue();
        assertThat(fit.b10Interval().holds(fit.b10())).isTrue();
    }

    @Property(tries = 60, seed = "21")
    void anotherUnitOfTimeStretchesTheLivesAndLeavesTheShape(
            @ForAll @DoubleRange(min = 0.01, max = 10_000) double stretch,
            @ForAll @IntRange(min = 1, max = 10_000) int draw) {
        List<Life> lives = WeibullDraw.censored(2.2, 500, 30, 600, draw);
        WeibullFit one = WeibullFit.of(lives);
        WeibullFit other = WeibullFit.of(lives.stream()
                .map(life -> new Life(life.age() * stretch, life.failed(), life.count()))
                .toList());

        same(other.beta(), one.beta());
        same(other.betaInterval(), one.betaInterval(), 1);
        same(other.eta(), one.eta() * stretch);
        same(other.etaInterval(), one.etaInterval(), stretch);
        same(other.b10Interval(), one.b10Interval(), stretch);
    }

    @Property(tries = 40, seed = "22")
    void aCountIsTheSameAsSoManyLinesInAnyOrder(@ForAll @IntRange(min = 1, max = 10_000) int draw) {
        List<Life> counted = new ArrayList<>();
        List<Life> lines = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(draw);
        for (Life life : WeibullDraw.censored(0.8, 40, 20, 60, draw)) {
            int count = 1 + random.nextInt(4);
            counted.add(new Life(life.age(), life.failed(), count));
            for (int i = 0; i < count; i++) {
                lines.add(random.nextInt(lines.size() + 1), life);
            }
        }
        WeibullFit one = WeibullFit.of(counted);
        WeibullFit other = WeibullFit.of(lines);

        same(other.beta(), one.beta());
        same(other.etaInterval(), one.etaInterval(), 1);
        same(other.logLikelihood(), one.logLikelihood());
    }

    /** Whoever was taken off long before the first failure has shown next to nothing. */
    @Test
    void unitsSuspendedBeforeAnythingHappensChangeNothing() {
        List<Life> more = new ArrayList<>(HANDBOOK);
        more.add(Life.suspended(1e-9, 1000));

        same(WeibullFit.of(more).beta(), WeibullFit.of(HANDBOOK).beta());
        same(WeibullFit.of(more).eta(), WeibullFit.of(HANDBOOK).eta());
    }

    @Test
    void withoutSuspensionsEtaIsThePowerMeanOfTheAges() {
        List<Life> all = List.of(Life.failed(10, 1), Life.failed(20, 1), Life.failed(30, 1), Life.failed(40, 1));
        WeibullFit fit = WeibullFit.of(all);
        double sum = all.stream()
                .mapToDouble(life -> Math.pow(life.age(), fit.beta()))
                .sum();

        assertThat(fit.eta()).isCloseTo(Math.pow(sum / 4, 1 / fit.beta()), within(1e-9));
    }

    @Test
    void withoutAFailureBeforeTheGreatestAgeThereIsNoFit() {
        assertThatThrownBy(() -> WeibullFit.of(List.of(Life.failed(7, 6), Life.suspended(3, 40))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("no failure before the greatest age");
        assertThatThrownBy(() -> WeibullFit.of(List.of(Life.suspended(3, 40))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void fiveFailuresAmongAHundredThousandAreFittedAllTheSame() {
        WeibullFit fit = WeibullFit.of(List.of(
                Life.failed(1.0 / 3, 1),
                Life.failed(2, 2),
                Life.failed(5, 1),
                Life.failed(11, 1),
                Life.suspended(12.5, 100_000)));

        assertThat(fit.betaInterval().low()).isPositive();
        assertThat(fit.etaInterval().high()).isFinite().isGreaterThan(fit.eta());
    }

    /** Ages in whole months, many alike, among up to a million survivors: what a shop's table looks like. */
    @Property(tries = 300, seed = "23")
    void tiedMonthsAmongAnyNumberOfSurvivorsAreFitted(@ForAll @IntRange(min = 1, max = 1_000_000) int draw) {
        SplittableRandom random = new SplittableRandom(draw);
        int watched = 2 + random.nextInt(35);
        List<Life> lives = new ArrayList<>(List.of(Life.suspended(
                watched + 0.5, 1 + (int) Math.pow(10, 6 * random.nextDouble()))));
        for (int i = 5 + random.nextInt(15); i > 0; i--) {
            int months = random.nextInt(watched + 1);
            lives.add(Life.failed(months == 0 ? 1.0 / 3 : months, 1));
        }
        WeibullFit fit = WeibullFit.of(lives);

        assertThat(fit.betaInterval().holds(fit.beta())).isTrue();
        assertThat(fit.etaInterval().holds(fit.eta())).isTrue();
        assertThat(fit.b10Interval().holds(fit.b10())).isTrue();
        assertThat(fit.logLikelihood()).isFinite();
    }

    private static List<Life> handbook() {
        List<Life> lives = new ArrayList<>(DoubleStream.of(54, 187, 216, 240, 244, 335, 361, 373, 375, 386)
                .mapToObj(age -> Life.failed(age, 1))
                .toList());
        lives.add(Life.suspended(500, 10));
        return lives;
    }

    private static double withB10(double beta, double b10) {
        return logLikelihood(beta, b10 / Math.pow(-Math.log(0.9), 1 / beta));
    }

    private static double logLikelihood(double beta, double eta) {
        double sum = 0;
        for (Life life : HANDBOOK) {
            double x = life.age() / eta;
            double density = life.failed() ? Math.log(beta / eta) + (beta - 1) * Math.log(x) : 0;
            sum += life.count() * (density - Math.pow(x, beta));
        }
        return sum;
    }

    private static double highest(DoubleUnaryOperator function, double from, double to) {
        double low = from;
        double high = to;
        double best = low;
        for (int round = 0; round < 6; round++) {
            double step = (high - low) / 100;
            for (double x = low; x <= high; x += step) {
                best = function.applyAsDouble(x) > function.applyAsDouble(best) ? x : best;
            }
            low = best - step;
            high = best + step;
        }
        return function.applyAsDouble(best);
    }

    private static void same(Interval actual, Interval expected, double stretch) {
        same(actual.low(), expected.low() * stretch);
        same(actual.high(), expected.high() * stretch);
    }

    private static void same(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, within(1e-7 * Math.abs(expected)));
    }
}
