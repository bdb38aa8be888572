package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.curve.CurveFile;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.rule.Source;

/** The line that a verdict names really holds the number. */
class ProvenanceTest {
    private static final Path SHELF = Firmware.root().resolve("fixtures");

    private static List<String> lines(Source source) throws Exception {
        List<String> all = Files.readAllLines(SHELF.resolve(source.file()));
        return all.subList(source.line() - 1, all.size());
    }

    private static double number(String line) {
        return Double.parseDouble(
                line.substring(line.indexOf(':') + 1).replaceAll("#.*", "").strip());
    }

    @Test
    void theLimitsOfACurveAreMadeOfTheNumbersAtTheirLine() throws Exception {
        HealthyCurve curve = CurveFile.read(SHELF.resolve("curves/demo-pump.yaml"));
        PlantRun.Outcome run = PlantRun.of(
                new PumpPlant(new PumpPopulation(4711).unit(1), SensorErrors.drawn(1), 1),
                Bench.plan(),
                Bench.channels());
        Grade grade = Grader.grade(
                Bench.input(run.trace(), run.ending(), Optional.of(curve)).by(ShippedRules.PUMP));
        List<FeatureJudgement> judged =
                grade.points().stream().filter(FeatureJudgement::judged).toList();
        assertThat(judged).hasSize(6);
        for (FeatureJudgement feature : judged) {
            Source source = feature.limits().source();
            assertThat(source.file()).isEqualTo("curves/demo-pump.yaml");
            assertThat(source.version()).isEqualTo(curve.version());
            List<String> there = lines(source);
            assertThat(there.get(0)).startsWith("  - effective_volts: ");
            double volts = number(there.get(0));
            double above = number(there.get(5));
            assertThat(feature.volts()).isBetween(volts, above * 1.08);
            double t = Math.min(1, (feature.volts() - volts) / (above - volts));
            boolean flow = feature.feature().quantity() == Feature.Kind.FLOW;
            int at = flow ? 1 : 3;
            double mean = between(there, at, t);
            double spread = between(there, at + 1, t) / 100;
            double si = flow ? FlowRate.ofGallonsPerMinute(1).m3PerSecond() : 1;
            double low = mean * (1 - curve.toleranceFactor() * spread) * si;
            double high = mean * (1 + curve.toleranceFactor() * spread) * si;
            assertThat(feature.limits().low()).isCloseTo(low, within(1e-9 * high));
            assertThat(feature.limits().high()).isCloseTo(high, within(1e-9 * high));
            requireGuard(feature);
        }
    }

    /** A point has five lines: volts, flow, its spread, amps, its spread. */
    private static double between(List<String> lines, int at, double t) {
        double below = number(lines.get(at));
        return below + t * (number(lines.get(at + 5)) - below);
    }

    private static void requireGuard(FeatureJudgement feature) throws Exception {
        String line = lines(feature.guard().source()).get(0);
        assertThat(line.strip()).startsWith("guard_factor:");
        assertThat(number(line)).isEqualTo(feature.guard().factor());
        assertThat(feature.guard().width())
                .isEqualTo(feature.guard().factor() * feature.measured().standardUncertainty());
    }

    @Test
    void theLimitsOfReadingsAreTheNumbersAtTheirLine() throws Exception {
        List<Finding> findings = List.of(
                reading("start duty", 0.10, FindingUnit.SHARE),
                reading("start duty", 0.30, FindingUnit.SHARE),
                reading("pressure, outlet closed, time 1 of 2", 80.0 * 6894.757, FindingUnit.PASCALS));
        List<FeatureJudgement> judged = new ReadingJudge(ShippedRules.PUMP).figures(findings);
        assertThat(judged).hasSize(3);
        String low = lines(judged.get(0).limits().source()).get(0).strip();
        assertThat(low).startsWith("low:");
        assertThat(number(low) / 100).isCloseTo(judged.get(0).limits().low(), within(1e-12));
        String high = lines(judged.get(1).limits().source()).get(0).strip();
        assertThat(high).startsWith("high:");
        assertThat(number(high) / 100).isCloseTo(judged.get(1).limits().high(), within(1e-12));
        assertThat(judged.get(1).decision()).isEqualTo(FeatureJudgement.Decision.HIGH);
        for (FeatureJudgement feature : judged) {
            requireGuard(feature);
        }
    }

    private static Finding reading(String name, double value, FindingUnit unit) {
        return new Finding("step", name, new Finding.Figure(Uncertain.of(value, value * 0.01), unit), "");
    }
}
