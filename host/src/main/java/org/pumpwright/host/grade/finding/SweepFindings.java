package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.Hysteresis;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.PointMark;

/** What a sweep reads besides its points: hysteresis, settling time, surge, health of the pulses. Thread-safe. */
final class SweepFindings {
    /** A flow has come in when it stays this near to its final value (common practice, no source). */
    private static final double SETTLED_SHARE = 0.05;

    private final FindingInput input;
    private final Sweep sweep;
    private final List<PointMark> visited;
    private final List<PointMark> points;
    private final MeterChannel meter;

    private SweepFindings(FindingInput input, Sweep sweep) {
        this.input = input;
        this.sweep = sweep;
        meter = input.trace().channels().flowMeter();
        visited = input.points(sweep);
        points = visited.stream()
                .filter(point -> input.measured(point).pulses(meter.index()) > 0)
                .toList();
    }

    static List<Finding> of(FindingInput input, Sweep sweep) {
        SweepFindings sweeping = new SweepFindings(input, sweep);
        List<Finding> findings = new ArrayList<>();
        sweeping.hysteresis().ifPresent(findings::add);
        sweeping.settling().ifPresent(findings::add);
        sweeping.highest().ifPresent(point -> {
            SurgeFinding.of(sweep.name(), input.measured(point)).ifPresent(findings::add);
            findings.addAll(PulseFindings.of(input, sweep, sweeping.points, sweeping.meter.index()));
        });
        return findings;
    }

    private Optional<PointMark> highest() {
        return points.stream().max(Comparator.comparingDouble(this::hertz));
    }

    private double hertz(PointMark point) {
        return input.measured(point).hertz(meter.index()).value();
    }

    /** Only where the sweep came down again and repeated its first point. */
    private Optional<Finding> hysteresis() {
        List<Hysteresis.Point> up = leg(Leg.UP);
        List<Hysteresis.Point> down = leg(Leg.DOWN);
        List<Hysteresis.Point> again = leg(Leg.REPEAT);
        boolean bothWays = down.stream().anyMatch(d -> up.stream().anyMatch(u -> u.duty() == d.duty()));
        if (points.isEmpty()
                || !bothWays
                || again.size() != 1
                || up.get(0).duty() != again.get(0).duty()) {
            return Optional.empty();
        }
        double full =
                up.stream().mapToDouble(point -> point.value().value()).max().orElseThrow();
        Hysteresis found = Hysteresis.of(up, down, again.get(0), full);
        return Optional.of(Finding.figure(
                sweep.name(),
                "hysteresis",
                found.share().with(doubtOfWarmUp(found, up, down, full), Double.POSITIVE_INFINITY),
                FindingUnit.SHARE,
                format(
                        "of full flow, largest at %s, %s way more; warm-up of %+.2f %% a minute taken out",
                        Figures.duty(found.duty()),
                        found.share().value() > 0 ? "down" : "up",
                        found.warmUpPerSecond().value() * 6000)));
    }

    /**
     * The repeated point is reached from above. What it differs by may be hysteresis of its own and not warming, so as much as
     * was taken out for warming is in doubt: rectangular (JCGM 100, 4.3.7).
     */
    private static double doubtOfWarmUp(
            Hysteresis found, List<Hysteresis.Point> up, List<Hysteresis.Point> down, double full) {
        double plain = (valueAt(down, found.duty()) - valueAt(up, found.duty())) / full;
        return Math.abs(plain - found.share().value()) / Math.sqrt(3);
    }

    private static double valueAt(List<Hysteresis.Point> points, double duty) {
        return points.stream()
                .filter(point -> point.duty() == duty)
                .findFirst()
                .orElseThrow()
                .value()
                .value();
    }

    private List<Hysteresis.Point> leg(Leg leg) {
        return visited.stream()
                .filter(point -> point.leg() == leg)
                .map(this::point)
                .toList();
    }

    /** Without the uncertainty of K, which all points share. */
    private Hysteresis.Point point(PointMark mark) {
        Uncertain hertz = input.measured(mark).hertz(meter.index());
        double perHertz = meter.k().flowPerHertz(meter.flow(hertz.value()));
        Uncertain flow = new Uncertain(
                meter.flow(hertz.value()).m3PerSecond(),
                hertz.standardUncertainty() * perHertz,
                hertz.degreesOfFreedom());
        double seconds = (mark.measureFromNanos() + mark.endNanos()) / 2e9;
        return new Hysteresis.Point(mark.commanded().fraction(), seconds, flow);
    }

    private record Settled(PointMark point, Uncertain seconds) {}

    /** The longest of all points, from the set point on. */
    private Optional<Finding> settling() {
        List<Settled> settled = new ArrayList<>();
        for (PointMark point : points) {
            Window all = input.window(point.setNanos(), point.endNanos());
            Optional<Uncertain> seconds = SteadyFrom.of(all, meter.index(), hertz(point), SETTLED_SHARE);
            if (seconds.isEmpty()) {
                return Optional.of(Finding.word(
                        sweep.name(),
                        "settling time",
                        "not steady",
                        format(
                                "the flow at %s left its mean by more than 5 %% to the last",
                                point.commanded().print())));
            }
            settled.add(new Settled(point, seconds.get()));
        }
        return settled.stream()
                .max(Comparator.comparingDouble(s -> s.seconds().value()))
                .map(longest -> Finding.figure(
                        sweep.name(),
                        "settling time",
                        longest.seconds(),
                        FindingUnit.SECONDS,
                        format(
                                "longest of %d points, at %s: from the set point until the flow stayed within 5 %%",
                                settled.size(), longest.point().commanded().print())));
    }
}
