package org.pumpwright.host.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.rule.Role;
import org.pumpwright.host.trace.Leg;

class SweepLineTest {
    private static RunRecord with(RunRecord run, List<FeatureJudgement> features) {
        Grade was = run.grade();
        return SampleRecords.withGrade(
                run,
                new Grade(
                        was.verdict(),
                        was.reasons(),
                        was.standChecks(),
                        features,
                        was.causes(),
                        was.nextTest(),
                        was.rule(),
                        was.advisory()));
    }

    private static List<Optional<Leg>> legs(RunRecord run) {
        return SweepLine.of(run).stream().map(SweepLine::leg).toList();
    }

    @Test
    void eachFeatureBelongsToThePointAtWhichItWasMeasured() {
        List<SweepLine> lines = SweepLine.of(SampleRecords.pass());
        assertThat(lines)
                .extracting(line -> line.leg().orElseThrow() + " " + line.duty().print())
                .containsExactly(
                        "UP 20 %",
                        "UP 30 %",
                        "UP 50 %",
                        "UP 75 %",
                        "UP 100 %",
                        "DOWN 75 %",
                        "DOWN 50 %",
                        "DOWN 30 %",
                        "REPEAT 20 %");
        assertThat(lines).allMatch(line -> line.features().size() == 2);
        assertThat(lines.stream()
                        .filter(SweepLine::judged)
                        .map(line -> line.duty().print()))
                .containsExactly("30 %", "50 %", "100 %");
    }

    @Test
    void theQuantitiesMayComeOneAfterTheOther() {
        RunRecord run = SampleRecords.pass();
        List<FeatureJudgement> features = new ArrayList<>();
        for (Feature.Kind kind : SweepLine.KINDS) {
            run.grade().features().stream()
                    .filter(f -> f.feature().quantity() == kind)
                    .forEach(features::add);
        }
        assertThat(SweepLine.of(with(run, features))).isEqualTo(SweepLine.of(run));
    }

    @Test
    void aJudgedFeatureIsOfTheWayUpEvenWhenFeaturesBeforeItAreMissing() {
        RunRecord run = SampleRecords.pass();
        List<FeatureJudgement> judged =
                run.grade().features().stream().filter(FeatureJudgement::judged).toList();
        assertThat(legs(with(run, judged)))
                .containsExactly(Optional.of(Leg.UP), Optional.of(Leg.UP), Optional.of(Leg.UP));
    }

    @Test
    void aFeatureOfNoPointOfTheTraceKeepsALineOfItsOwn() {
        RunRecord run = SampleRecords.pass();
        FeatureJudgement one = run.grade().features().get(0);
        FeatureJudgement stray = new FeatureJudgement(
                Feature.at(Feature.Kind.FLOW, Duty.ofPercent(42), Leg.UP),
                one.effectiveVolts(),
                one.measured(),
                one.limits(),
                one.guard(),
                one.decision(),
                Role.INFORMATION);
        List<SweepLine> lines = SweepLine.of(with(run, List.of(one, stray)));
        assertThat(lines).hasSize(2);
        assertThat(lines.get(1).point()).isEmpty();
        assertThat(lines.get(1).duty().print()).isEqualTo("42 %");
    }
}
