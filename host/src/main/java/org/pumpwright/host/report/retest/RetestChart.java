package org.pumpwright.host.report.retest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Axis;
import org.pumpwright.host.report.draw.Marker;
import org.pumpwright.host.report.draw.SvgChart;
import org.pumpwright.host.report.draw.SvgChart.Spot;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.report.sheet.Legend;
import org.pumpwright.host.report.sheet.SheetPage;
import org.pumpwright.host.text.Texts;

/**
 * One quantity of two sweeps over effective volts: the way up of each, before open and dashed, after filled and solid, on the
 * healthy band of the later run. Thread-safe.
 */
final class RetestChart {
    private static final double SIZE = 4;

    private final Feature.Kind kind;
    private final FeatureWords words;
    private final Texts texts;
    private final List<FeatureJudgement> before;
    private final List<FeatureJudgement> after;
    private final List<FeatureJudgement> banded;

    RetestChart(Feature.Kind kind, Retest retest, FeatureWords words, Texts texts) {
        this.kind = kind;
        this.words = words;
        this.texts = texts;
        before = wayUp(retest.before());
        after = wayUp(retest.after());
        banded = retest.speaksOfTheUnit() ? band(retest) : List.of();
    }

    /** The band of both runs' points where they share a curve: it then reaches as far as either. */
    private List<FeatureJudgement> band(Retest retest) {
        Stream<FeatureJudgement> all =
                retest.sameCurve() ? Stream.concat(before.stream(), after.stream()) : after.stream();
        return all.sorted(Comparator.comparingDouble(FeatureJudgement::volts)).toList();
    }

    private List<FeatureJudgement> wayUp(RunRecord run) {
        return run.grade().points().stream()
                .filter(point ->
                        point.feature().quantity() == kind && point.feature().onTheWayUp())
                .filter(point -> Double.isFinite(point.volts()))
                .sorted(Comparator.comparingDouble(FeatureJudgement::volts))
                .toList();
    }

    boolean isEmpty() {
        return before.isEmpty() && after.isEmpty();
    }

    Tag draw(int width, int height) {
        List<FeatureJudgement> all =
                Stream.concat(before.stream(), after.stream()).toList();
        double volts = all.stream().mapToDouble(FeatureJudgement::volts).max().orElse(0);
        double largest = Stream.concat(
                        all.stream().map(point -> point.measured().value()),
                        banded.stream().map(point -> point.limits().high()))
                .mapToDouble(this::shown)
                .max()
                .orElse(0);
        SvgChart chart = new SvgChart(width, height, Axis.toCover(volts, 7), Axis.toCover(largest, 5));
        if (!banded.isEmpty()) {
            chart.area(corners(), "band");
        }
        chart.grid(
                texts.say("sheet.axis.volts"),
                texts.say(title(), words.unit(either().feature().unit())));
        if (!banded.isEmpty()) {
            chart.line(spots(banded, FeatureJudgement::centre), "mean");
        }
        chart.line(measured(before), "before").line(measured(after), "after");
        measured(before).forEach(spot -> chart.marker(spot, Marker.SQUARE, SIZE, "open"));
        measured(after).forEach(spot -> chart.marker(spot, Marker.DISC, SIZE, "solid"));
        return SheetPage.drawing(chart.draw(texts.say("retest.chart_spoken")), width, height);
    }

    private FeatureJudgement either() {
        return before.isEmpty() ? after.get(0) : before.get(0);
    }

    private String title() {
        return kind == Feature.Kind.FLOW ? "sheet.axis.flow" : "sheet.axis.motor_amps";
    }

    private List<Spot> corners() {
        List<Spot> corners =
                new ArrayList<>(spots(banded, point -> point.limits().low()));
        List<Spot> upper = new ArrayList<>(spots(banded, point -> point.limits().high()));
        Collections.reverse(upper);
        corners.addAll(upper);
        return corners;
    }

    private List<Spot> measured(List<FeatureJudgement> points) {
        return spots(points, point -> point.measured().value());
    }

    private List<Spot> spots(List<FeatureJudgement> points, ToDoubleFunction<FeatureJudgement> value) {
        return points.stream()
                .map(point -> new Spot(point.volts(), shown(value.applyAsDouble(point))))
                .toList();
    }

    private double shown(double si) {
        return words.shown(kind, si);
    }

    /** What lines and shapes mean, drawn with the same styles. */
    static Tag legend(boolean banded, Texts texts) {
        Legend legend = new Legend()
                .add(
                        texts.say("retest.before"),
                        Legend.line("before"),
                        Marker.SQUARE.at(15, 7, SIZE).set("class", "open"))
                .add(
                        texts.say("retest.after"),
                        Legend.line("after"),
                        Marker.DISC.at(15, 7, SIZE).set("class", "solid"));
        if (banded) {
            legend.add(texts.say("sheet.healthy_range"), Legend.band())
                    .add(texts.say("sheet.its_mean"), Legend.line("mean"));
        }
        return legend.draw();
    }
}
