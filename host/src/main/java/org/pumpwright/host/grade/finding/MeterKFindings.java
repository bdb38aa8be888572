package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.PointMark;

/**
 * K of a returned meter over all flows of a sweep, against the master in the same water, and against what the model should
 * have. The master's K is one error common to all flows: it acts on K as a whole and leaves the lag alone, but for how far
 * that K may differ from flow to flow, which its certificate does not tell and which is taken as large as the error itself.
 * Thread-safe.
 */
final class MeterKFindings {
    static final String STEP = "meter";

    /** Above this share of the highest flow a meter may cavitate: the line is laid through what is below. */
    private static final double LINE_SHARE = 0.8;

    /** A count's own uncertainty is not believed below this: blades and jitter are alike from point to point. */
    private static final double LEAST_RELATIVE = 3e-4;

    private final FindingInput input;
    private final Sweep sweep;
    private final MeterChannel master;
    private final List<MeterLine.Point> points = new ArrayList<>();
    private double silentUpTo;
    private double countsFrom = Double.POSITIVE_INFINITY;

    private MeterKFindings(FindingInput input, Sweep sweep, MeterChannel master) {
        this.input = input;
        this.sweep = sweep;
        this.master = master;
        input.points(sweep).forEach(this::add);
    }

    static List<Finding> of(FindingInput input, Sweep sweep, MeterChannel master) {
        return new MeterKFindings(input, sweep, master).findings();
    }

    private void add(PointMark mark) {
        Window window = input.measured(mark);
        if (window.pulses(MeterFindings.MASTER) == 0) {
            return;
        }
        Uncertain under = window.hertz(MeterFindings.MASTER);
        double flow = master.flow(under.value()).m3PerSecond();
        if (window.pulses(MeterFindings.RETURNED) == 0) {
            silentUpTo = Math.max(silentUpTo, flow);
            return;
        }
        countsFrom = Math.min(countsFrom, flow);
        Uncertain hertz = window.hertz(MeterFindings.RETURNED);
        double k = hertz.value() / flow;
        if (flow >= master.least().m3PerSecond()) {
            double byCounts = Math.hypot(hertz.relative(), under.relative());
            points.add(new MeterLine.Point(
                    flow, new Uncertain(k, k * Math.max(LEAST_RELATIVE, byCounts), hertz.degreesOfFreedom())));
        }
    }

    private List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        findings.add(Finding.word(
                STEP, "pulses seen", seen(), "at " + input.points(sweep).size() + " points"));
        if (points.isEmpty()) {
            return findings;
        }
        double top = points.stream().mapToDouble(MeterLine.Point::flow).max().orElseThrow();
        List<MeterLine.Point> below = points.stream()
                .filter(point -> point.flow() <= LINE_SHARE * top)
                .toList();
        findings.add(start());
        Optional<MeterLine> line = MeterLine.of(below);
        if (line.isEmpty()) {
            findings.add(Finding.word(
                    STEP,
                    "lag against the master",
                    "not measured",
                    format("%d different flows, 3 are needed", MeterLine.flows(below))));
        }
        Uncertain middle = line.map(l -> l.at(top / 2))
                .orElseGet(() -> points.get(points.size() - 1).k());
        line.ifPresent(l -> findings.addAll(ofLine(l, top)));
        findings.addAll(
                KRatio.of(input, middle.with(middle.value() * master.relativeUncertainty(), Double.POSITIVE_INFINITY)));
        return findings;
    }

    private String seen() {
        if (countsFrom == Double.POSITIVE_INFINITY) {
            return "none";
        }
        return silentUpTo > 0 ? "at some flows" : "at every flow";
    }

    private List<Finding> ofLine(MeterLine line, double top) {
        double share = master.relativeUncertainty();
        double lowest = points.stream().mapToDouble(MeterLine.Point::flow).min().orElseThrow();
        List<Finding> findings = new ArrayList<>();
        findings.add(Finding.figure(
                STEP,
                "K at high flow",
                line.limit().with(line.limit().value() * share, Double.POSITIVE_INFINITY),
                FindingUnit.PULSES_PER_M3,
                "what K tends to: K_inf of K = K_inf (1 - b/Q)"));
        findings.add(Finding.figure(
                STEP,
                "lag against the master",
                line.lag().with(share * lowest, Double.POSITIVE_INFINITY),
                FindingUnit.M3_PER_SECOND,
                "b of K = K_inf (1 - b/Q); what the master lags itself is taken off"));
        List<MeterLine.Point> high =
                points.stream().filter(point -> point.flow() > LINE_SHARE * top).toList();
        if (!high.isEmpty()) {
            MeterLine.Point point = high.get(0);
            Uncertain over = Common.over(point.k(), line.at(point.flow()));
            findings.add(Finding.figure(
                    STEP,
                    "K at full flow over the line",
                    Common.less(over, 1),
                    FindingUnit.SHARE,
                    "against the line through the lower flows: too little back pressure makes it rise"));
        }
        return findings;
    }

    /** Anywhere between two flows of the sweep: rectangular (JCGM 100, 4.3.7). */
    private Finding start() {
        double width = Math.max(0, countsFrom - silentUpTo);
        return Finding.figure(
                STEP,
                "start flow",
                Uncertain.of((countsFrom + silentUpTo) / 2, width / Math.sqrt(12)),
                FindingUnit.M3_PER_SECOND,
                format(
                        "counts at %s; %s",
                        new FlowRate(countsFrom).print(input.units()),
                        silentUpTo > 0
                                ? "silent at " + new FlowRate(silentUpTo).print(input.units())
                                : "silent nowhere"));
    }
}
