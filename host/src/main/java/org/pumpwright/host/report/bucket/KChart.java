package org.pumpwright.host.report.bucket;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecord.Fit;
import org.pumpwright.host.record.BucketRecord.Flow;
import org.pumpwright.host.report.draw.Axis;
import org.pumpwright.host.report.draw.Marker;
import org.pumpwright.host.report.draw.SvgChart;
import org.pumpwright.host.report.draw.SvgChart.Spot;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Interpreter;

/** How far each flow's K is off the one K, over the flow, with U as bars and the formula as a line. Thread-safe. */
final class KChart {
    private static final double PERCENT = 100;
    private static final int STEPS = 60;

    private KChart() {}

    static Tag draw(BucketRecord record, UnitSystem units, Interpreter in) {
        double highest = record.flows().stream()
                .mapToDouble(flow -> shown(flow.m3PerSecond(), units))
                .max()
                .orElse(1);
        double reach = record.flows().stream()
                .mapToDouble(flow -> Math.abs(off(record, flow.k().pulsesPerM3()))
                        + PERCENT * flow.k().relativeExpandedUncertainty())
                .max()
                .orElse(1);
        Axis half = Axis.toCover(reach, 2);
        Axis y = new Axis(-half.to(), half.to(), half.step());
        SvgChart chart = new SvgChart(740, 190, Axis.toCover(highest, 8), y)
                .grid(in.say("bucket.head.flow", new Figures(units, in).flowUnit()), in.say("bucket.chart.off"));
        chart.line(List.of(new Spot(0, 0), new Spot(Axis.toCover(highest, 8).to(), 0)), "one");
        record.result().fit().ifPresent(fit -> chart.line(curve(record, fit, units, y), "formula"));
        for (Flow flow : record.flows()) {
            Spot spot = new Spot(
                    shown(flow.m3PerSecond(), units), off(record, flow.k().pulsesPerM3()));
            chart.errorBar(spot, PERCENT * flow.k().relativeExpandedUncertainty());
            chart.marker(spot, marker(flow.leg()), 4, "point");
        }
        return Tag.of("section", "chart")
                .add(chart.draw(in.say("bucket.chart")))
                .add(Tag.withText(
                                "p",
                                in.say(
                                        record.result().fit().isPresent()
                                                ? "bucket.chart.with_formula"
                                                : "bucket.chart.without_formula"))
                        .set("class", "small"));
    }

    private static Marker marker(String leg) {
        return switch (leg) {
            case "down" -> Marker.TRIANGLE_DOWN;
            case "repeat" -> Marker.DIAMOND;
            default -> Marker.DISC;
        };
    }

    /** As far as it stays in the chart: towards no flow the formula falls without end. */
    private static List<Spot> curve(BucketRecord record, Fit fit, UnitSystem units, Axis y) {
        double lowest =
                record.flows().stream().mapToDouble(Flow::m3PerSecond).min().orElse(0);
        double highest =
                record.flows().stream().mapToDouble(Flow::m3PerSecond).max().orElse(0);
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double flow = lowest * Math.pow(highest / lowest, (double) i / STEPS);
            double value = off(record, fit.kInfinity() * (1 - fit.b() / flow));
            if (value >= y.from() && value <= y.to()) {
                spots.add(new Spot(shown(flow, units), value));
            }
        }
        return spots;
    }

    private static double off(BucketRecord record, double pulsesPerM3) {
        return PERCENT * (pulsesPerM3 / record.result().single().pulsesPerM3() - 1);
    }

    private static double shown(double m3PerSecond, UnitSystem units) {
        FlowRate flow = new FlowRate(m3PerSecond);
        return units == UnitSystem.US ? flow.gallonsPerMinute() : flow.litresPerMinute();
    }
}
