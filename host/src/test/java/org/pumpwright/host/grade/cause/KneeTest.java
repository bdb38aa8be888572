package org.pumpwright.host.grade.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.grade.cause.CauseTexts.Need;

/** A bypass that opens early may be named by the dead-head or by a knee of the sweep, and not without either. */
final class KneeTest {
    private static final List<String> POINTS =
            List.of("flow@25", "flow@50", "flow@75", "flow@100", "amps@25", "amps@50", "amps@75", "amps@100");

    private static Evidence sweep(String... more) {
        TreeMap<String, Observation> all = new TreeMap<>();
        POINTS.forEach(key -> all.put(key, new Observation(0, 0.01)));
        for (String key : more) {
            all.put(key, new Observation(0.2, 0));
        }
        return new Evidence(all, true);
    }

    private static List<String> missing(Evidence evidence) {
        List<Need> needs = CauseTexts.of(UnitKind.PUMP_12V)
                .orElseThrow()
                .text("bypass-low")
                .orElseThrow()
                .needs();
        return CauseTexts.Text.missing(needs, evidence);
    }

    @Test
    void withNeitherTheDeadHeadIsAskedFor() {
        assertThat(missing(sweep())).containsExactly("the pressure against a closed outlet");
    }

    @Test
    void eitherIsEnough() {
        assertThat(missing(sweep("knee"))).isEmpty();
        assertThat(missing(sweep("dead-head/pressure, outlet closed"))).isEmpty();
    }

    @Test
    void onlyAFlowThatKeepsToTheCurveAndThenFallsOffItHasAKnee() {
        Map<String, Boolean> shapes = new TreeMap<>();
        shapes.put(
                "bypass",
                SweepEvidence.knee(List.of(0.01, 0.0, -0.01, 0.0, -0.02, -0.12)).isPresent());
        shapes.put(
                "slip",
                SweepEvidence.knee(List.of(-0.04, -0.05, -0.06, -0.07, -0.08, -0.09))
                        .isPresent());
        shapes.put(
                "healthy",
                SweepEvidence.knee(List.of(0.01, 0.0, -0.01, 0.0, -0.01, -0.02)).isPresent());
        shapes.put(
                "drag",
                SweepEvidence.knee(List.of(-0.34, -0.25, -0.15, -0.12, -0.09, -0.06))
                        .isPresent());
        shapes.put("few", SweepEvidence.knee(List.of(0.0, 0.0, -0.12)).isPresent());

        assertThat(shapes)
                .containsExactlyInAnyOrderEntriesOf(
                        Map.of("bypass", true, "slip", false, "healthy", false, "drag", false, "few", false));
    }
}
