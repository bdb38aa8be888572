package org.pumpwright.host.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.report.draw.Axis;
import org.pumpwright.host.report.draw.Marker;
import org.pumpwright.host.report.draw.SvgChart;
import org.pumpwright.host.report.draw.SvgChart.Spot;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Interpreter;
import org.pumpwright.host.trace.Leg;

/**
 * One quantity of a sweep over effective volts: healthy band, way up, way down, repeated point, each with its expanded
 * uncertainty, and the judged points that fail or lie near a limit by shape and by name. The band joins the limits at the
 * points that were measured. Thread-safe.
 */
final class SweepChart {
    private static final double BIG = 4.5;
    private static final double SMALL = 3;

    private final Feature.Kind kind;
    private final FeaturePrinter printer;
    private final Interpreter in;
    private final List<SweepLine> lines;

    /** The chart of the lines that have this quantity. */
    SweepChart(Feature.Kind kind, FeaturePrinter printer, List<SweepLine> lines, Interpreter in) {
        this.in = in;
        this.kind = kind;
        this.printer = printer;
        this.lines =
                lines.stream().filter(line -> line.feature(kind).isPresent()).toList();
    }

    boolean isEmpty() {
        return lines.isEmpty();
    }

    Tag draw(double width, double height) {
        double volts =
                lines.stream().mapToDouble(SweepLine::effectiveVolts).max().orElse(0);
        double largest = judgements().stream()
                .mapToDouble(f -> Math.max(f.limits().high(), f.measured().value() + expanded(f)))
                .max()
                .orElse(0);
        SvgChart chart = new SvgChart(width, height, Axis.toCover(volts, 7), Axis.toCover(shown(largest), 5));
        chart.area(band(), "band");
        String quantity = in.stored(kind.words());
        chart.grid(in.say("chart.volts"), quantity + ", " + printer.unit(kind));
        chart.line(inOrderOfVolts(f -> f.centre()), "mean");
        chart.line(leg(Leg.UP), "up").line(wayDown(), "down");
        judgements().forEach(f -> chart.errorBar(measured(f), shown(expanded(f))));
        inDrawingOrder().forEach(line -> addPoint(chart, line));
        addNotes(chart);
        return chart.draw(in.say("chart.title", quantity));
    }

    /** What matters most is drawn last and so lies on top. */
    private List<SweepLine> inDrawingOrder() {
        return lines.stream()
                .sorted(Comparator.comparing(SweepLine::judged)
                        .thenComparing(line -> line.leg().orElse(Leg.UP) == Leg.UP))
                .toList();
    }

    private void addPoint(SvgChart chart, SweepLine line) {
        FeatureJudgement feature = of(line);
        Spot spot = measured(feature);
        if (isOutsider(feature)) {
            chart.marker(spot, shape(feature.decision()), BIG, feature.failed() ? "point fail" : "point near");
            return;
        }
        switch (line.leg().orElse(Leg.UP)) {
            case UP -> chart.marker(spot, Marker.DISC, feature.judged() ? BIG : SMALL, "point");
            case DOWN -> chart.marker(spot, Marker.DISC, SMALL, "point open");
            case REPEAT -> chart.marker(spot, Marker.DIAMOND, BIG, "point open");
        }
    }

    /** Each note then leaves room for the next: above a rising line there is room to the left, below it to the right. */
    private void addNotes(SvgChart chart) {
        Comparator<SweepLine> byVolts = Comparator.comparingDouble(SweepLine::effectiveVolts);
        lines.stream().filter(line -> !low(line)).sorted(byVolts).forEach(line -> addNote(chart, line));
        lines.stream().filter(this::low).sorted(byVolts.reversed()).forEach(line -> addNote(chart, line));
    }

    private boolean low(SweepLine line) {
        return of(line).deviation() < 0;
    }

    private void addNote(SvgChart chart, SweepLine line) {
        FeatureJudgement feature = of(line);
        if (isOutsider(feature)) {
            chart.note(measured(feature), low(line), feature.feature().duty().print() + words(feature.decision()));
        } else if (line.leg().equals(Optional.of(Leg.REPEAT))) {
            chart.note(measured(feature), low(line), in.say("chart.repeat"));
        }
    }

    private boolean isOutsider(FeatureJudgement feature) {
        return feature.judged() && feature.decision() != FeatureJudgement.Decision.INSIDE;
    }

    private static Marker shape(FeatureJudgement.Decision decision) {
        return switch (decision) {
            case LOW -> Marker.TRIANGLE_DOWN;
            case HIGH -> Marker.TRIANGLE_UP;
            case NEAR_LOW, NEAR_HIGH -> Marker.SQUARE;
            case INSIDE -> Marker.DISC;
        };
    }

    private String words(FeatureJudgement.Decision decision) {
        return switch (decision) {
            case LOW -> " " + in.say("chart.low");
            case HIGH -> " " + in.say("chart.high");
            case NEAR_LOW, NEAR_HIGH -> " " + in.say("chart.near");
            case INSIDE -> "";
        };
    }

    /** The lower limits from left to right, then the upper ones back. */
    private List<Spot> band() {
        List<Spot> corners = new ArrayList<>(inOrderOfVolts(f -> f.limits().low()));
        List<Spot> upper = new ArrayList<>(inOrderOfVolts(f -> f.limits().high()));
        Collections.reverse(upper);
        corners.addAll(upper);
        return corners;
    }

    private List<Spot> inOrderOfVolts(ToDoubleFunction<FeatureJudgement> value) {
        return judgements().stream()
                .sorted(Comparator.comparingDouble(FeatureJudgement::volts))
                .map(f -> new Spot(f.volts(), shown(value.applyAsDouble(f))))
                .toList();
    }

    private List<Spot> leg(Leg leg) {
        return lines.stream()
                .filter(line -> line.leg().orElse(Leg.UP) == leg)
                .map(line -> measured(of(line)))
                .toList();
    }

    /** Begins at the top of the way up. */
    private List<Spot> wayDown() {
        List<Spot> up = leg(Leg.UP);
        List<Spot> down = leg(Leg.DOWN);
        if (up.isEmpty() || down.isEmpty()) {
            return down;
        }
        List<Spot> all = new ArrayList<>(List.of(up.get(up.size() - 1)));
        all.addAll(down);
        return all;
    }

    private List<FeatureJudgement> judgements() {
        return lines.stream().map(this::of).toList();
    }

    private FeatureJudgement of(SweepLine line) {
        return line.feature(kind).orElseThrow();
    }

    private Spot measured(FeatureJudgement feature) {
        return new Spot(feature.volts(), shown(feature.measured().value()));
    }

    private static double expanded(FeatureJudgement feature) {
        return FeaturePrinter.COVERAGE_FACTOR * feature.measured().standardUncertainty();
    }

    private double shown(double si) {
        return printer.shown(kind, si);
    }
}
