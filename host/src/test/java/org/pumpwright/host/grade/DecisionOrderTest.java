package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.pumpwright.host.rule.GradingRules;

/** What comes first wins, whatever comes after it; and what follows from a verdict that stays open. */
class DecisionOrderTest {
    private static final Intake LEAK = Intake.NONE.observing(List.of("liquid drips from the pump head"));
    private static final Intake NO_PLUG = Intake.NONE.untestable("its plug is missing");
    private static final Intake LEAK_AND_NO_PLUG = NO_PLUG.observing(List.of("liquid drips from the pump head"));

    private static Grade grade(SyntheticRun run, Intake intake) {
        return Grader.grade(run.input().by(ShippedRules.PUMP).knowing(intake));
    }

    private static Arguments row(
            String what, Intake intake, UnaryOperator<SyntheticRun> made, Verdict verdict, String firstReason) {
        return Arguments.of(what, intake, made, verdict, firstReason);
    }

    static Stream<Arguments> orders() {
        UnaryOperator<SyntheticRun> good = run -> run;
        UnaryOperator<SyntheticRun> weak = run -> run.flow(50, 0.8);
        UnaryOperator<SyntheticRun> doubtful = run -> run.flow(50, 1 - 2.76 * 0.025);
        UnaryOperator<SyntheticRun> weakOnBadStand = run -> run.flow(50, 0.8).restVolts(12.5);
        return Stream.of(
                row("seen before all", LEAK_AND_NO_PLUG, weakOnBadStand, Verdict.FAIL, "liquid drips"),
                row("seen, though the figures are good", LEAK, good, Verdict.FAIL, "liquid drips"),
                row("not testable before the stand", NO_PLUG, weakOnBadStand, Verdict.NOT_TESTED, "not testable"),
                row("the stand before the unit", Intake.NONE, weakOnBadStand, Verdict.INVALID, "supply at rest"),
                row("a failure before a doubt", Intake.NONE, weak, Verdict.FAIL, "flow at 50 %"),
                row("a doubt before a pass", Intake.NONE, doubtful, Verdict.INCONCLUSIVE, "flow at 50 %"),
                row("nothing against it", Intake.NONE, good, Verdict.PASS, "all 7 judged features"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("orders")
    void theFirstThatHoldsDecides(
            String what, Intake intake, UnaryOperator<SyntheticRun> made, Verdict verdict, String firstReason) {
        Grade grade = grade(made.apply(SyntheticRun.healthy()), intake);
        assertThat(grade.verdict()).as(what).isEqualTo(verdict);
        assertThat(grade.reasons().get(0)).startsWith(firstReason);
    }

    @ParameterizedTest
    @CsvSource({
        "quits-hot, 'run the plan soak-12v-pump'",
        "intermittent, 'run the plan wiggle-12v-pump or soak-12v-pump'"
    })
    void aUnitThatPassesIsNotPassedWhenItsComplaintWasNotProvoked(String complaint, String next) {
        Grade grade = grade(SyntheticRun.healthy(), Intake.NONE.complaining(complaint));
        assertThat(grade.verdict()).isEqualTo(Verdict.INCONCLUSIVE);
        assertThat(grade.reasons()).hasSize(1);
        assertThat(grade.reasons().get(0)).endsWith("so it cannot pass yet");
        assertThat(grade.nextTest()).isEqualTo(next);
        assertThat(grade.explains().answer()).isEqualTo(ComplaintAnswer.Answer.NOT_ATTEMPTED);
    }

    @Test
    void aComplaintThatASweepCanSpeakToDoesNotBlockAPass() {
        assertThat(grade(SyntheticRun.healthy(), Intake.NONE.complaining("low")).verdict())
                .isEqualTo(Verdict.PASS);
    }

    @Test
    void aPointThatIsNotJudgedExplainsNoComplaint() {
        Grade grade = grade(SyntheticRun.healthy().flow(75, 0.8), Intake.NONE.complaining("low"));
        assertThat(grade.verdict()).isEqualTo(Verdict.PASS);
        assertThat(grade.explains().answer()).isEqualTo(ComplaintAnswer.Answer.NO);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | new prime, same set-up, once more",
                "2 | check the supply lead and the volts at the pins, or swap the lead, then once more",
                "3 | run 3 of 3 was the last retest: a named person decides now, and writes down the reason",
                "7 | run 7 of 3 was the last retest: a named person decides now, and writes down the reason"
            })
    void eachRetestChangesSomethingElseAndAfterTheLastAPersonDecides(int attempt, String next) {
        List<String> before =
                Stream.generate(() -> "earlier").limit(attempt - 1).toList();
        Grade grade = grade(SyntheticRun.healthy().flow(50, 1 - 2.76 * 0.025), Intake.NONE.after(before));
        assertThat(grade.verdict()).isEqualTo(Verdict.INCONCLUSIVE);
        assertThat(grade.nextTest()).isEqualTo(next);
        assertThat(grade.attempt()).isEqualTo(attempt);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "low | 0.8 | 1 | YES | the flow is below that of a healthy unit",
                "low | 1 | 1 | NO | the flow is that of a healthy unit",
                "no-flow | 0.8 | 1 | PARTLY | there is flow, but less than a healthy unit gives",
                "no-flow | 0 | 1 | YES | hardly any flow at any set point",
                "blows-fuse | 1 | 1.4 | PARTLY | it draws more than a healthy unit",
                "blows-fuse | 1 | 1 | NO | its current is usual",
                "surging | 1 | 1 | NO | the flow is even here",
                "leaks | 1 | 1 | NOT_ATTEMPTED | nobody looked at the highest pressure",
                "quits-hot | 1 | 1 | NOT_ATTEMPTED | the soak was not run",
                "wont-start | 1 | 1 | NOT_ATTEMPTED | no start was watched",
                "reads-with-no-flow | 1 | 1 | NOT_ATTEMPTED | the plan without flow was not run",
                "reads-wrong | 0.8 | 1 | PARTLY | by the stand's own meter the unit's flow itself is wrong",
                "smells | 1 | 1 | NOT_ATTEMPTED | this program knows no test for the complaint 'smells'"
            })
    void whetherTheComplaintIsExplainedIsSaidApartFromTheVerdict(
            String complaint, double flow, double amps, ComplaintAnswer.Answer answer, String why) {
        SyntheticRun run = SyntheticRun.healthy().everywhere(flow, amps);
        if (flow == 0) {
            run.pressureFactor(0);
        }
        Grade grade = grade(run, Intake.NONE.complaining(complaint));
        assertThat(grade.explains()).isEqualTo(new ComplaintAnswer(answer, why));
    }

    @Test
    void aLeakThatWasSeenExplainsALeak() {
        Grade grade = grade(SyntheticRun.healthy(), LEAK.complaining("leaks"));
        assertThat(grade.explains().answer()).isEqualTo(ComplaintAnswer.Answer.YES);
        assertThat(grade.nextTest()).startsWith("stop testing");
    }

    @Test
    void theShopsRulesAreNamedInTheRule() {
        GradingRules rules = ShippedRules.PUMP;
        assertThat(grade(SyntheticRun.healthy(), Intake.NONE).rule())
                .contains("Limits of single readings: rules pump-12v v" + rules.version())
                .contains(
                        "The guard stands in " + rules.decision().guardSource().words());
    }

    @Test
    void aPlanWithoutItsCurveIsNotTestedThoughSomethingElseWasJudged() {
        GradingInput input = Bench.input(SyntheticRun.healthy().trace(), Bench.COMPLETED, Optional.empty());
        assertThat(Grader.grade(input.by(ShippedRules.PUMP)).verdict()).isEqualTo(Verdict.NOT_TESTED);
    }
}
