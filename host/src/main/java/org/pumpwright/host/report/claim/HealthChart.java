package org.pumpwright.host.report.claim;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.report.draw.Axis;
import org.pumpwright.host.report.draw.Marker;
import org.pumpwright.host.report.draw.SvgChart;
import org.pumpwright.host.report.draw.SvgChart.Spot;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.report.sheet.Legend;
import org.pumpwright.host.report.sheet.SheetPage;
import org.pumpwright.host.text.Texts;

/** The flow of the unit and the range of healthy ones over effective volts, the way up only. Thread-safe. */
final class HealthChart {
    private static final double SIZE = 4.5;

    private final FeatureWords words;
    private final Texts texts;
    private final String reader;
    private final List<FeatureJudgement> points;

    /**
     * The chart of these features.
     *
     * @param reader whose words it speaks: the begin of the keys of its texts
     */
    HealthChart(List<FeatureJudgement> features, String reader, FeatureWords words, Texts texts) {
        this.words = words;
        this.texts = texts;
        this.reader = reader;
        points = features.stream()
                .filter(point -> point.feature().quantity() == Feature.Kind.FLOW
                        && point.feature().onTheWayUp())
                .filter(point -> point.limits().centre().isPresent())
                .filter(point -> Double.isFinite(point.volts()))
                .sorted(Comparator.comparingDouble(FeatureJudgement::volts))
                .toList();
    }

    /** Two points at least make a line. */
    boolean isEmpty() {
        return points.size() < 2;
    }

    Tag draw(int width, int height) {
        double volts = points.get(points.size() - 1).volts();
        double largest = points.stream()
                .mapToDouble(point ->
                        shown(Math.max(point.limits().high(), point.measured().value())))
                .max()
                .orElse(1);
        SvgChart chart = new SvgChart(width, height, Axis.toCover(volts, 7), Axis.toCover(largest, 5));
        List<Spot> yours = spots(point -> point.measured().value());
        chart.area(band(), "band");
        chart.grid(
                texts.say(reader + ".axis"),
                texts.say("sheet.axis.flow", words.unit(points.get(0).feature().unit())));
        chart.line(yours, "yours");
        yours.forEach(spot -> chart.marker(spot, Marker.DISC, SIZE, "mine"));
        return SheetPage.drawing(chart.draw(texts.say(reader + ".graph")), width, height);
    }

    /** What the two are, drawn with the same styles. */
    Tag legend() {
        return new Legend()
                .add(
                        texts.say(reader + ".yours"),
                        Legend.line("yours"),
                        Marker.DISC.at(15, 7, SIZE).set("class", "mine"))
                .add(texts.say(reader + ".healthy"), Legend.band())
                .draw();
    }

    private List<Spot> band() {
        List<Spot> corners = new ArrayList<>(spots(point -> point.limits().low()));
        List<Spot> upper = new ArrayList<>(spots(point -> point.limits().high()));
        Collections.reverse(upper);
        corners.addAll(upper);
        return corners;
    }

    private List<Spot> spots(ToDoubleFunction<FeatureJudgement> value) {
        return points.stream()
                .map(point -> new Spot(point.volts(), shown(value.applyAsDouble(point))))
                .toList();
    }

    private double shown(double si) {
        return words.shown(Feature.Kind.FLOW, si);
    }
}
