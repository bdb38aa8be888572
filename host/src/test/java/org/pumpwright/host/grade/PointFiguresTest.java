package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Leg;

/** Corrections and budgets of points. */
class PointFiguresTest {
    private static Grade grade(SyntheticRun run) {
        return Grader.grade(run.input().by(ShippedRules.PUMP));
    }

    private static FeatureJudgement at(Grade grade, Feature.Kind kind, int percent) {
        return grade.points().stream()
                .filter(f -> f.feature().equals(Feature.at(kind, Duty.ofPercent(percent), Leg.UP)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyCorrectionIsKeptInItsOrderEvenWhenItIsZero() {
        Grade grade = grade(SyntheticRun.healthy());
        assertThat(at(grade, Feature.Kind.FLOW, 50).corrections())
                .extracting(Correction::name)
                .containsExactly("zero", "meter K", "volts", "nozzle", "winding temperature", "water temperature");
        assertThat(at(grade, Feature.Kind.MOTOR_AMPS, 50).corrections())
                .extracting(Correction::name)
                .containsExactly("zero", "volts", "nozzle", "winding temperature", "water temperature");
    }

    /** 13.8 V less the sag of 0.05 ohm; the line has 0.3 gal/min a volt: the size is that of the missing volts. */
    @Test
    void theSizeOfTheVoltsIsWhatTheMissingVoltsWouldGive() {
        FeatureJudgement flow = at(grade(SyntheticRun.healthy()), Feature.Kind.FLOW, 100);
        Correction volts = flow.corrections().get(2);
        double missing = 13.8 - flow.volts();
        assertThat(volts.size() * 60 / 3.785411784e-3).isCloseTo(0.3 * missing, within(1e-6));
        assertThat(volts.applied()).isFalse();
    }

    @Test
    void thePartsOfAnUncertaintyAddUpToIt() {
        for (FeatureJudgement feature : grade(SyntheticRun.healthy()).points()) {
            double squares = feature.budget().stream()
                    .mapToDouble(term -> term.standardUncertainty() * term.standardUncertainty())
                    .sum();
            double all = feature.measured().standardUncertainty();
            assertThat(Math.sqrt(squares)).isCloseTo(all, within(1e-9 * all));
        }
    }

    /** K 0.5, air 0.3, water 0.25, day 0.4, nozzle 0.5 times 0.41; the volts and the scatter of the made run are small. */
    @Test
    void theBudgetOfAFlowIsThatOfTheRules() {
        FeatureJudgement flow = at(grade(SyntheticRun.healthy()), Feature.Kind.FLOW, 100);
        double known = Math.sqrt(0.5 * 0.5 + 0.3 * 0.3 + 0.25 * 0.25 + 0.4 * 0.4 + 0.205 * 0.205);
        assertThat(flow.measured().relative() * 100).isBetween(known, known + 0.05);
        assertThat(flow.budget())
                .filteredOn(term -> term.name().equals("day and technician"))
                .hasSize(1)
                .allMatch(term ->
                        Math.abs(term.standardUncertainty() / flow.measured().value() - 0.004) < 1e-12);
    }

    /** Without pressure the nozzle is only known to 3 %. */
    @Test
    void aNozzleThatWasNotMeasuredWeighsMore() {
        Grade without = grade(SyntheticRun.healthy().without(ChannelRole.OUTLET_PRESSURE));
        FeatureJudgement flow = at(without, Feature.Kind.FLOW, 100);
        assertThat(flow.budget())
                .filteredOn(term -> term.name().equals("nozzle"))
                .hasSize(1)
                .allMatch(term ->
                        Math.abs(term.standardUncertainty() / flow.measured().value() - 0.03 * 0.41) < 1e-9);
        assertThat(without.verdict()).isEqualTo(Verdict.PASS);
    }

    /** What both flows share falls out: of a ratio only scatter and what the nozzle weighs differently is left. */
    @Test
    void theMetersKFallsOutOfTheDroop() {
        Uncertain droop = grade(SyntheticRun.healthy()).findings().stream()
                .filter(f -> f.name().startsWith("flow at 100 %"))
                .map(Finding::outcome)
                .map(outcome -> ((Finding.Figure) outcome).value())
                .findFirst()
                .orElseThrow();
        assertThat(droop.relative()).isLessThan(0.003);
        assertThat(droop.value()).isCloseTo(4.03 / 2.06, within(0.05));
    }

    /** JCGM 100, 5.2.2: with r = 1 the shared shares subtract, 0.5 % from 0.8 %, and 0.1 % each is left beside. */
    @Test
    void sharedPartsOfARatioSubtractAndOwnPartsAdd() {
        PointFigure above = figure(10, 0.08, 0.01);
        PointFigure below = figure(20, 0.10, 0.02);
        Uncertain ratio = Ratio.of(above, below);
        double expected = Math.sqrt(0.003 * 0.003 + 0.001 * 0.001 + 0.001 * 0.001);
        assertThat(ratio.relative()).isCloseTo(expected, within(1e-12));
    }

    private static PointFigure figure(double value, double shared, double own) {
        return new PointFigure(
                value,
                List.of(),
                Uncertain.of(value, Math.sqrt(shared * shared + own * own)),
                List.of(new BudgetTerm("scatter", own, ""), new BudgetTerm("meter K", shared, "meter K")),
                "");
    }

    @Test
    void aPointWhoseVoltsAreTooFarOffIsShownForInformationAndKeepsTheUnitFromPassing() {
        // So much current that a lead in order explains the sag, and no more.
        Grade grade = grade(SyntheticRun.healthy().supplyOhms(0.095).amps(100, 1.12));
        FeatureJudgement flow = at(grade, Feature.Kind.FLOW, 100);
        assertThat(flow.judged()).isFalse();
        assertThat(flow.remark()).startsWith("volts at the pins -8.").endsWith("at most 8 % may be judged");
        assertThat(grade.verdict()).isEqualTo(Verdict.INCONCLUSIVE);
        assertThat(grade.reasons().get(0)).startsWith("flow at 100 % could not be judged: volts at the pins");
    }
}
