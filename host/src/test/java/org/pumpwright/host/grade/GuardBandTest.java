package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.grade.FeatureJudgement.Decision;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.rule.Source;

/** Worked examples of JCGM 106:2012, and the edges of the rule. */
class GuardBandTest {
    private static final double FAR = 1e6;

    private static Limits limits(double low, double centre, double high) {
        return Limits.of("guide", new Band(low, centre, high), Source.PROGRAM);
    }

    /** JCGM 106, table 1: one-sided 95 % is 1.64 standard uncertainties. */
    @Test
    void theStandardGuardIsTheOneSided95PercentPoint() {
        double z = new NormalDistribution().inverseCumulativeProbability(0.95);
        assertThat(GuardBand.STANDARD.factor()).isCloseTo(z, within(0.0005));
    }

    /** JCGM 106, 7.3: a diode at -5.47 V, u 0.05 V, upper limit -5.40 V conforms with probability 0.92, z = 1.40. */
    @Test
    void aDiodeThatConformsWith92PercentIsTooCloseToTellAt95() {
        Uncertain volts = Uncertain.of(-5.47, 0.05);
        Limits limits = limits(-FAR, -6, -5.40);
        assertThat(GuardBand.STANDARD.decide(volts, limits)).isEqualTo(Decision.NEAR_HIGH);
        assertThat(new GuardBand(1.39).decide(volts, limits)).isEqualTo(Decision.INSIDE);
    }

    /** JCGM 106, 7.4: oil at 13.6, u 1.8, limits 12.5 to 16.3 conforms with probability 0.66. */
    @Test
    void anOilThatConformsWith66PercentIsTooCloseToTell() {
        Decision decision = GuardBand.STANDARD.decide(Uncertain.of(13.6, 1.8), limits(12.5, 14.4, 16.3));
        assertThat(decision).isEqualTo(Decision.NEAR_LOW);
    }

    /** JCGM 106, 8.3.3: limit 100 km/h, u 2 %, 99.9 % sure: fined from 107 km/h on, z = 3.09. */
    @ParameterizedTest
    @CsvSource({"101, NEAR_HIGH", "106, NEAR_HIGH", "107, HIGH"})
    void aDriverIsFinedFromTheGuardedLimitOn(double speed, Decision decision) {
        Uncertain measured = Uncertain.of(speed, 0.02 * speed);
        assertThat(new GuardBand(3.09).decide(measured, limits(0, 50, 100))).isEqualTo(decision);
    }

    /** JCGM 106, 8.3.2: with a guard of 2 u a wrong acceptance has at most 2.3 % probability. */
    @Test
    void aGuardOfTwoUncertaintiesLeaves23PerMilleRiskAtTheLimit() {
        double accepted = shareAccepted(new GuardBand(2), 10, new Random(8));
        assertThat(accepted).isCloseTo(0.0228, within(0.0015));
    }

    @Test
    void theStandardGuardLeavesAtMostFivePercentRiskAtTheLimit() {
        double accepted = shareAccepted(GuardBand.STANDARD, 10, new Random(9));
        assertThat(accepted).isCloseTo(0.05, within(0.002));
    }

    @Test
    void aUnitTwoUncertaintiesBeyondItsLimitHardlyEverPasses() {
        assertThat(shareAccepted(GuardBand.STANDARD, 8, new Random(11))).isLessThan(0.001);
    }

    /** How often a thing of this true value, measured with uncertainty 1, is accepted above a lower limit of 10. */
    private static double shareAccepted(GuardBand guard, double truth, Random random) {
        int trials = 200_000;
        int accepted = 0;
        for (int i = 0; i < trials; i++) {
            Uncertain measured = Uncertain.of(truth + random.nextGaussian(), 1);
            accepted += guard.decide(measured, limits(10, 20, FAR)) == Decision.INSIDE ? 1 : 0;
        }
        return (double) accepted / trials;
    }

    /**
     * JCGM 106, 9.5.3: resistors 1500 ohm, production 0.12, measured with 0.04, limits +-0.2, accepted within +-0.18: of
     * 100, 84 are accepted, 1 of them wrongly, and 7 good ones are rejected.
     */
    @Test
    void theResistorsOfTheGuideHaveTheirRisks() {
        Random random = new Random(10);
        GuardBand guard = new GuardBand(0.5);
        Limits limits = limits(1499.8, 1500, 1500.2);
        int trials = 400_000;
        int wronglyAccepted = 0;
        int wronglyRejected = 0;
        for (int i = 0; i < trials; i++) {
            double truth = 1500 + 0.12 * random.nextGaussian();
            boolean good = Math.abs(truth - 1500) <= 0.2;
            Uncertain measured = Uncertain.of(truth + 0.04 * random.nextGaussian(), 0.04);
            boolean accepted = guard.decide(measured, limits) == Decision.INSIDE;
            wronglyAccepted += accepted && !good ? 1 : 0;
            wronglyRejected += !accepted && good ? 1 : 0;
        }
        assertThat((double) wronglyAccepted / trials).isCloseTo(0.01, within(0.001));
        assertThat((double) wronglyRejected / trials).isCloseTo(0.07, within(0.003));
    }

    @ParameterizedTest
    @CsvSource({
        "8.3, LOW", "8.4, NEAR_LOW", "10, NEAR_LOW", "11.6, NEAR_LOW", "11.7, INSIDE",
        "28.3, INSIDE", "28.4, NEAR_HIGH", "30, NEAR_HIGH", "31.6, NEAR_HIGH", "31.7, HIGH"
    })
    void bothLimitsAreGuardedOnBothSides(double value, Decision decision) {
        assertThat(GuardBand.STANDARD.decide(Uncertain.of(value, 1), limits(10, 20, 30)))
                .isEqualTo(decision);
    }

    /** A side without a limit is never near and never missed. */
    @ParameterizedTest
    @CsvSource({"-1000, LOW", "9, NEAR_LOW", "12, INSIDE", "1000000, INSIDE"})
    void anOpenSideIsNeverNear(double value, Decision decision) {
        Limits open = new Limits("open", 10, OptionalDouble.empty(), Double.POSITIVE_INFINITY, Source.PROGRAM, "");
        assertThat(GuardBand.STANDARD.decide(Uncertain.of(value, 1), open)).isEqualTo(decision);
    }

    @Property(seed = "20260102", tries = 300)
    void mirroredValuesGetMirroredDecisions(@ForAll @DoubleRange(min = -3, max = 3) double offset) {
        Limits limits = limits(-1, 0, 1);
        Decision right = GuardBand.STANDARD.decide(Uncertain.of(offset, 0.2), limits);
        Decision left = GuardBand.STANDARD.decide(Uncertain.of(-offset, 0.2), limits);
        assertThat(left).isEqualTo(mirrored(right, offset));
    }

    private static Decision mirrored(Decision decision, double offset) {
        if (offset == 0) {
            return decision;
        }
        return switch (decision) {
            case INSIDE -> Decision.INSIDE;
            case LOW -> Decision.HIGH;
            case HIGH -> Decision.LOW;
            case NEAR_LOW -> Decision.NEAR_HIGH;
            case NEAR_HIGH -> Decision.NEAR_LOW;
        };
    }
}
