package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.Interpolation;
import org.pumpwright.host.curve.LimitSet;
import org.pumpwright.host.quantity.FlowRate;

/** Limits of function beside the healthy range. */
class FunctionalLimitsTest {
    private static HealthyCurve curve(double atVolts, double leastGpm, double guardFactor) {
        LimitSet set = new LimitSet(
                "Planter, 16 rows",
                "rate chart with 15 % margin",
                "B. Second",
                guardFactor,
                List.of(new LimitSet.Limit(
                        LimitSet.Quantity.FLOW,
                        atVolts,
                        OptionalDouble.of(FlowRate.ofGallonsPerMinute(leastGpm).m3PerSecond()),
                        OptionalDouble.empty())));
        HealthyCurve line = SyntheticRun.curve();
        return new HealthyCurve(
                line.id(),
                line.version(),
                line.title(),
                line.conditions(),
                line.simulated(),
                line.units(),
                line.toleranceFactor(),
                line.coverage(),
                line.freewheelVolts(),
                line.points(),
                line.author(),
                line.made(),
                Interpolation.LINEAR,
                Optional.empty(),
                Optional.empty(),
                List.of(set));
    }

    private static Grade grade(HealthyCurve curve) {
        return SyntheticRun.healthy().grade(trace -> Bench.input(trace, curve));
    }

    private static FeatureJudgement ofSet(Grade grade) {
        return grade.features().stream()
                .filter(f -> f.limits().set().startsWith("Planter"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aUnitThatMeetsBothSetsPasses() {
        Grade grade = grade(curve(13, 3.5, 1));
        assertThat(grade.verdict()).isEqualTo(Verdict.PASS);
        assertThat(grade.reasons()).containsExactly("all 7 judged features lie inside their limits");
        assertThat(grade.rule()).contains("Limit set Planter, 16 rows, set by B. Second");
    }

    @Test
    void aHealthyUnitFailsWhatItMustDoForTheMachine() {
        Grade grade = grade(curve(13, 4.5, 1));
        assertThat(grade.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(grade.reasons())
                .hasSize(1)
                .allMatch(reason ->
                        reason.startsWith("flow at 13.0 effective volts: 4.00 gal/min, at least 4.50 needed"));
    }

    /** The line 0.1 + 0.3 U: at 13 V 4 gal/min, wherever near it the unit was read. */
    @Test
    void theUnitIsBroughtToTheLimitsVoltsAlongTheCurveAndThatIsTold() {
        FeatureJudgement judged = ofSet(grade(curve(13, 3.5, 1)));
        assertThat(new FlowRate(judged.measured().value()).gallonsPerMinute()).isCloseTo(4.0, within(0.002));
        Correction last = judged.corrections().get(judged.corrections().size() - 1);
        assertThat(last.name()).isEqualTo("to the limit's volts");
        assertThat(judged.limits().hasHigh()).isFalse();
    }

    @Test
    void aSetHasAGuardOfItsOwn() {
        FeatureJudgement one = ofSet(grade(curve(13, 3.98, 0)));
        FeatureJudgement two = ofSet(grade(curve(13, 3.98, 2)));
        assertThat(one.decision()).isEqualTo(FeatureJudgement.Decision.INSIDE);
        assertThat(two.decision()).isEqualTo(FeatureJudgement.Decision.NEAR_LOW);
        assertThat(two.guard().width()).isCloseTo(2 * two.measured().standardUncertainty(), within(1e-15));
    }

    @Test
    void aLimitThatNoPointReachesKeepsTheUnitFromPassing() {
        Grade near = grade(curve(10, 2.0, 1));
        assertThat(near.verdict()).isEqualTo(Verdict.PASS);
        Grade far = grade(curve(8, 2.0, 1));
        assertThat(far.verdict()).isEqualTo(Verdict.INCONCLUSIVE);
        assertThat(far.reasons())
                .containsExactly("limit set Planter, 16 rows: no point of the run comes near to 8.00 effective volts");
    }
}
