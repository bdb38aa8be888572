package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.grade.FeatureJudgement.Decision;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Leg;

/** Verdicts on traces made to order, with the stand in order. */
class GraderTest {
    private static final Duty HALF = Duty.ofPercent(50);

    private static FeatureJudgement feature(Grade grade, Feature.Kind kind, Duty duty) {
        return grade.features().stream()
                .filter(f -> f.judged() && f.feature().equals(Feature.at(kind, duty, Leg.UP)))
                .findFirst()
                .orElseThrow();
    }

    private static FeatureJudgement flowAtHalf(Grade grade) {
        return feature(grade, Feature.Kind.FLOW, HALF);
    }

    @Test
    void aUnitOnTheHealthyCurvePasses() {
        Grade grade = SyntheticRun.healthy().grade();
        assertThat(grade.verdict()).isEqualTo(Verdict.PASS);
        assertThat(grade.reasons()).containsExactly("all 6 judged features lie inside their healthy ranges");
        assertThat(grade.causes()).isEmpty();
        assertThat(grade.nextTest()).isEmpty();
        assertThat(grade.advisory()).isFalse();
        assertThat(grade.standChecks())
                .allMatch(StandCheck::ok)
                .allMatch(check -> check.remedy().isEmpty());
    }

    @Test
    void everyPointGivesFlowAndMotorAmpsInTheOrderOfTheSweep() {
        Grade grade = SyntheticRun.healthy().grade();
        assertThat(grade.features())
                .extracting(f -> f.feature().words())
                .startsWith("flow at 20 %", "motor amps at 20 %", "flow at 30 %")
                .endsWith("motor amps at 30 %", "flow at 20 %", "motor amps at 20 %")
                .hasSize(18);
        assertThat(grade.features()).filteredOn(FeatureJudgement::judged).hasSize(6);
    }

    /**
     * By hand, at 50 % and 13.8 V less 0.05 ohm: U from U = 0.5 V - 0.25, V = 13.8 - 0.05 * 0.5 * (1 + 0.8 U); flow
     * uncertainty: K 0.5 % of the flow, and 0.3 gal/min per volt times half of 17 mV (0.1 % of 13.7 V, and 10 mV).
     */
    @Test
    void theUncertaintyHoldsMeterVoltsAndSlope() {
        FeatureJudgement flow = flowAtHalf(SyntheticRun.healthy().grade());
        double volts = (0.5 * (13.8 - 0.05 * 0.5) - 0.25) / (1 + 0.5 * 0.05 * 0.5 * 0.8);
        assertThat(flow.volts()).isCloseTo(volts, within(0.001));
        double gpm = 0.1 + 0.3 * volts;
        double meter = 0.005 * gpm;
        double pins = 13.8 - 0.025 * (1 + 0.8 * volts);
        double throughVolts = 0.3 * 0.5 * Math.hypot(0.001 * pins, 0.010);
        double expected = Math.hypot(meter, throughVolts);
        double gallonsPerMinute = 3.785411784e-3 / 60;
        assertThat(flow.measured().value() / gallonsPerMinute).isCloseTo(gpm, within(0.0005));
        assertThat(flow.measured().standardUncertainty() / gallonsPerMinute).isCloseTo(expected, within(0.0001));
        assertThat(flow.guard().width()).isCloseTo(1.645 * flow.measured().standardUncertainty(), within(1e-15));
    }

    /** The unit lies this many standard uncertainties above the limit (below it when negative). */
    @ParameterizedTest
    @CsvSource({
        "-1.75, FAIL, LOW",
        "-1.55, INCONCLUSIVE, NEAR_LOW",
        "0, INCONCLUSIVE, NEAR_LOW",
        "1.55, INCONCLUSIVE, NEAR_LOW",
        "1.75, PASS, INSIDE"
    })
    void theLowerLimitOfFlowIsGuarded(double uncertainties, Verdict verdict, Decision decision) {
        double atLimit = 1 - 2.76 * 0.025;
        double u = flowAtHalf(SyntheticRun.healthy().flow(50, atLimit).grade())
                        .guard()
                        .width()
                / 1.645;
        double centre = flowAtHalf(SyntheticRun.healthy().grade()).centre();
        Grade grade = SyntheticRun.healthy()
                .flow(50, atLimit + uncertainties * u / centre)
                .grade();
        assertThat(grade.verdict()).isEqualTo(verdict);
        assertThat(flowAtHalf(grade).decision()).isEqualTo(decision);
    }

    @ParameterizedTest
    @CsvSource({
        "1.75, FAIL, HIGH",
        "1.55, INCONCLUSIVE, NEAR_HIGH",
        "-1.55, INCONCLUSIVE, NEAR_HIGH",
        "-1.75, PASS, INSIDE"
    })
    void theUpperLimitOfMotorAmpsIsGuarded(double uncertainties, Verdict verdict, Decision decision) {
        double atLimit = 1 + 2.76 * 0.07;
        FeatureJudgement there =
                feature(SyntheticRun.healthy().amps(100, atLimit).grade(), Feature.Kind.MOTOR_AMPS, Duty.FULL);
        double u = there.measured().standardUncertainty() / there.centre();
        Grade grade =
                SyntheticRun.healthy().amps(100, atLimit + uncertainties * u).grade();
        assertThat(grade.verdict()).isEqualTo(verdict);
        assertThat(feature(grade, Feature.Kind.MOTOR_AMPS, Duty.FULL).decision())
                .isEqualTo(decision);
    }

    @Test
    void aLowFlowFailsWithItsFigures() {
        Grade grade = SyntheticRun.healthy().flow(50, 0.8).grade();
        assertThat(grade.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(grade.reasons()).containsExactly("flow at 50 %: 1.66 gal/min, at least 1.93 needed (-20 %)");
        assertThat(grade.nextTest()).isNotEmpty();
    }

    @Test
    void aHighCurrentFailsWithItsFiguresThoughTheFlowIsGood() {
        Grade grade = SyntheticRun.healthy().amps(30, 1.5).grade();
        assertThat(grade.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(grade.reasons()).containsExactly("motor amps at 30 %: 6.0 A, at most 4.8 allowed (+50 %)");
    }

    @Test
    void theWorstFeatureIsNamedFirst() {
        Grade grade = SyntheticRun.healthy().flow(50, 0.8).flow(100, 0.6).grade();
        assertThat(grade.reasons()).hasSize(2);
        assertThat(grade.reasons().get(0)).startsWith("flow at 100 %");
    }

    @Test
    void reasonsComeInTheShopsUnits() {
        Grade grade = SyntheticRun.healthy()
                .flow(50, 0.8)
                .grade(trace -> new GradingInput(
                        trace,
                        Bench.COMPLETED,
                        Bench.plan(),
                        Optional.of(SyntheticRun.curve()),
                        Bench.CONDITIONS,
                        Bench.STAND,
                        UnitSystem.METRIC));
        assertThat(grade.reasons()).containsExactly("flow at 50 %: 6.27 L/min, at least 7.30 needed (-20 %)");
    }

    @Test
    void aFeatureNearItsLimitIsInconclusiveAndAsksForANewPrime() {
        Grade grade = SyntheticRun.healthy().flow(50, 1 - 2.76 * 0.025).grade();
        assertThat(grade.verdict()).isEqualTo(Verdict.INCONCLUSIVE);
        assertThat(grade.reasons())
                .containsExactly("flow at 50 %: 1.93 gal/min, too close to the limit 1.93 to tell (within 0.02)");
        assertThat(grade.nextTest()).isEqualTo("new prime, same set-up, once more");
    }

    @Test
    void aPointThatIsNotJudgedCannotFailTheUnit() {
        Grade grade = SyntheticRun.healthy().flow(75, 0.5).grade();
        assertThat(grade.verdict()).isEqualTo(Verdict.PASS);
        assertThat(grade.features()).anyMatch(FeatureJudgement::failed);
    }

    @Test
    void aJudgedPointThatDidNotSettleCannotPass() {
        Grade grade = SyntheticRun.healthy().unsettledFrom(100).grade();
        assertThat(grade.verdict()).isEqualTo(Verdict.INCONCLUSIVE);
        assertThat(grade.reasons()).containsExactly("the point at 100 % did not settle: it cannot pass");
    }

    @Test
    void aJudgedPointWithTooFewPulsesCannotPass() {
        Grade grade = SyntheticRun.healthy().tooFewPulsesFrom(100).grade();
        assertThat(grade.verdict()).isEqualTo(Verdict.INCONCLUSIVE);
        assertThat(grade.reasons()).hasSize(1);
        assertThat(grade.reasons().get(0)).matches("the point at 100 % had 10\\d\\d pulses, too few: it cannot pass");
    }

    @Test
    void withoutACurveNothingIsJudged() {
        Grade grade = SyntheticRun.healthy().grade(trace -> Bench.input(trace, Bench.COMPLETED, Optional.empty()));
        assertThat(grade.verdict()).isEqualTo(Verdict.NOT_TESTED);
        assertThat(grade.reasons()).containsExactly("there is no healthy curve for this model and set-up");
        assertThat(grade.nextTest()).isEqualTo("choose or make a healthy curve, then grade this run again");
        assertThat(grade.rule()).endsWith("There was no healthy curve.");
    }

    @Test
    void aProvisionalCurveOnlyAdvises() {
        Grade grade = SyntheticRun.healthy().grade(trace -> Bench.input(trace, SyntheticRun.curve(4, 6.37, 1, 14.5)));
        assertThat(grade.verdict()).isEqualTo(Verdict.PASS);
        assertThat(grade.advisory()).isTrue();
    }

    @Test
    void theRuleNamesGuardRiskCurveAndUnits() {
        assertThat(SyntheticRun.healthy().grade().rule())
                .isEqualTo("PASS when every judged feature lies inside its limits by its guard, FAIL when one lies"
                        + " outside by its guard, else INCONCLUSIVE. Guard 1.645 u, u being the feature's standard"
                        + " uncertainty: at most 5 % one-sided risk at a limit (JCGM 106). Healthy range: mean +- k s of"
                        + " curve line v3, n = 20 known-good units, k = 2.76 (95 % of units with 95 % confidence).");
    }

    @Test
    void aUnitThatEndsTheRunFailsForThat() {
        Ending ending = new Ending(Ending.Kind.UNIT_OUT_OF_BOUNDS, "the unit drew 31.2 A for 0.2 s");
        Grade grade = SyntheticRun.healthy()
                .everywhere(0, 3)
                .endsBefore(50)
                .grade(trace -> Bench.input(trace, ending, Optional.of(SyntheticRun.curve())));
        assertThat(grade.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(grade.reasons().get(0)).isEqualTo("the unit ended the run: the unit drew 31.2 A for 0.2 s");
        assertThat(grade.causes())
                .extracting(Cause::name)
                .containsExactly(
                        "the pump is stuck: seized, or full of crystals",
                        "a lead or the winding leaks current to the case");
        assertThat(grade.nextTest()).startsWith("do not drive it again: turn it by hand");
    }

    @Test
    void aUnitThatEndsTheRunFailsWithoutACurveToo() {
        Ending ending = new Ending(Ending.Kind.UNIT_OUT_OF_BOUNDS, "the unit drew 31.2 A for 0.2 s");
        Grade grade =
                SyntheticRun.healthy().endsBefore(20).grade(trace -> Bench.input(trace, ending, Optional.empty()));
        assertThat(grade.verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void aUnitThatDrawsNoCurrentFailsAndSendsTheTechnicianToTheLead() {
        Grade grade = SyntheticRun.healthy().everywhere(0, 0).grade();
        assertThat(grade.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(grade.reasons().get(0))
                .isEqualTo(
                        "no current though driven: 0.00 A at 100 % with 13.80 V at the pins; check lead and plug first");
        assertThat(grade.causes()).extracting(Cause::name).containsExactly("winding, brush or lead is open");
        assertThat(grade.nextTest()).startsWith("check the lead and the plug first");
    }

    @Test
    void aFlowBelowTheMetersRangeIsLowNotAFaultOfTheStand() {
        Grade grade = SyntheticRun.healthy().flow(30, 0.25).grade();
        assertThat(grade.verdict()).isEqualTo(Verdict.FAIL);
        FeatureJudgement flow = feature(grade, Feature.Kind.FLOW, Duty.ofPercent(30));
        double range = 2 * Bench.channels().flowMeter().least().m3PerSecond();
        assertThat(flow.measured().standardUncertainty()).isCloseTo(range / Math.sqrt(12), within(range * 0.01));
    }

    @Test
    void theSameInputGivesTheSameGrade() {
        GradingInput input = SyntheticRun.healthy().flow(50, 0.8).amps(30, 1.4).input();
        assertThat(Grader.grade(input)).isEqualTo(Grader.grade(input));
        assertThat(Grader.grade(input))
                .isEqualTo(SyntheticRun.healthy().flow(50, 0.8).amps(30, 1.4).grade());
    }

    @Test
    void aStandWithoutPressureGradesTheSame() {
        Grade with = SyntheticRun.healthy().flow(50, 0.8).grade();
        Grade without = SyntheticRun.healthy()
                .without(ChannelRole.OUTLET_PRESSURE)
                .flow(50, 0.8)
                .grade();
        assertThat(without.verdict()).isEqualTo(with.verdict());
        assertThat(without.reasons()).isEqualTo(with.reasons());
    }
}
