package org.pumpwright.host.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.SvgChart.Spot;
import org.pumpwright.host.text.Interpreter;

/** The drawing is 430 by 200: 0 V at x = 40, 14 V at x = 420; 0 gal/min at y = 166, 5 gal/min at y = 20. */
class SweepChartTest {
    private static String draw(RunRecord run) {
        return new SweepChart(
                        Feature.Kind.FLOW, new FeaturePrinter(UnitSystem.US), SweepLine.of(run), Interpreter.english())
                .draw(430, 200)
                .toString();
    }

    private static List<Spot> points(String svg, String element) {
        MatchResult found = Pattern.compile("<" + element + " points=\"([^\"]*)\"")
                .matcher(svg)
                .results()
                .findFirst()
                .orElseThrow();
        List<Spot> spots = new ArrayList<>();
        for (String pair : found.group(1).split(" ")) {
            String[] xy = pair.split(",");
            double x = (Double.parseDouble(xy[0]) - 40) / (420 - 40) * 14;
            double y = (166 - Double.parseDouble(xy[1])) / (166 - 20) * 5;
            spots.add(new Spot(x, y));
        }
        return spots;
    }

    private static List<FeatureJudgement> flowInOrderOfVolts(RunRecord run) {
        return run.grade().features().stream()
                .filter(f -> f.feature().quantity() == Feature.Kind.FLOW)
                .sorted(Comparator.comparingDouble(FeatureJudgement::volts))
                .toList();
    }

    @Test
    void theBandRunsAlongTheLowerLimitsAndBackAlongTheUpperOnes() {
        RunRecord run = SampleRecords.fail();
        List<FeatureJudgement> flows = flowInOrderOfVolts(run);
        List<Spot> band = points(draw(run), "polygon class=\"band\"");
        assertThat(band).hasSize(2 * flows.size());
        for (int i = 0; i < flows.size(); i++) {
            FeatureJudgement feature = flows.get(i);
            Spot low = band.get(i);
            Spot high = band.get(band.size() - 1 - i);
            assertThat(low.x()).isCloseTo(feature.volts(), within(0.003));
            assertThat(high.x()).isCloseTo(feature.volts(), within(0.003));
            assertThat(low.y()).isCloseTo(gallons(feature.limits().low()), within(0.003));
            assertThat(high.y()).isCloseTo(gallons(feature.limits().high()), within(0.003));
        }
    }

    @Test
    void theWayUpIsOneLineAndTheWayDownAnotherThatStartsAtTheTop() {
        String svg = draw(SampleRecords.fail());
        List<Spot> up = points(svg, "polyline class=\"up\"");
        List<Spot> down = points(svg, "polyline class=\"down\"");
        assertThat(up).hasSize(5).isSortedAccordingTo(Comparator.comparingDouble(Spot::x));
        assertThat(down)
                .hasSize(4)
                .isSortedAccordingTo(Comparator.comparingDouble(Spot::x).reversed());
        assertThat(down.get(0)).isEqualTo(up.get(4));
        assertThat(up.get(2).y()).isCloseTo(1.504, within(0.003));
    }

    @Test
    void eachPointHasAnErrorBarAndTheRepeatedOneIsNamed() {
        String svg = draw(SampleRecords.pass());
        assertThat(Pattern.compile("class=\"error\"").matcher(svg).results()).hasSize(3 * 9);
        assertThat(svg).containsOnlyOnce(">repeat<");
    }

    @Test
    void failingPointsDifferInShapeFromThoseThatPass() {
        assertThat(Pattern.compile("<polygon[^>]*class=\"point fail\"")
                        .matcher(draw(SampleRecords.fail()))
                        .results())
                .hasSize(3);
        assertThat(draw(SampleRecords.pass())).doesNotContain("point fail", "point near", "LOW", "HIGH");
        assertThat(Pattern.compile("<polygon[^>]*class=\"point near\"")
                        .matcher(draw(SampleRecords.inconclusive()))
                        .results())
                .hasSize(2);
    }

    private static double gallons(double m3PerSecond) {
        return new FlowRate(m3PerSecond).gallonsPerMinute();
    }
}
