package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.Statistics;
import org.pumpwright.host.signal.ThermalTrip;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;

/** Drift of flow and supply amps over a long hold, and whether the unit cut out. Thread-safe. */
final class SoakFindings {
    private static final double PER_SECONDS = 600;

    /** What the flow takes to come in is no drift. */
    private static final double MOST_LEFT_OUT_SECONDS = 10;

    private static final double LEFT_OUT_SHARE = 0.1;
    private static final int LEAST_PARTS = 8;
    private static final double LEAST_AMPS = 0.5;

    /** The flow ends before the trip is told. */
    private static final double BEFORE_TRIP_SECONDS = 2;

    private final Hold hold;

    private SoakFindings(Hold hold) {
        this.hold = hold;
    }

    static List<Finding> of(FindingInput input, Hold hold) {
        SoakFindings soaking = new SoakFindings(hold);
        List<Finding> findings = new ArrayList<>();
        List<Window> times = input.times(hold);
        for (int i = 0; i < times.size(); i++) {
            findings.addAll(soaking.of(times.get(i), i + 1, times.size()));
        }
        return findings;
    }

    private List<Finding> of(Window whole, int time, int of) {
        List<ThermalTrip> trips = CutOut.find(whole);
        double end = trips.stream()
                .findFirst()
                .map(trip -> trip.seconds().value() - BEFORE_TRIP_SECONDS)
                .orElse(Double.POSITIVE_INFINITY);
        double begin = hold.rampSeconds() + Math.min(MOST_LEFT_OUT_SECONDS, LEFT_OUT_SHARE * hold.seconds());
        Window steady = whole.between(begin, end);
        List<Finding> findings = new ArrayList<>();
        findings.add(flow(steady, Figures.time("drift of the flow", time, of)));
        findings.add(amps(steady, Figures.time("drift of the amps", time, of)));
        dropOuts(steady, Figures.time("drop-outs", time, of)).ifPresent(findings::add);
        findings.addAll(CutOut.findings(hold, whole, trips));
        return findings;
    }

    private static boolean tooShort(Window steady) {
        return steady.size() == 0 || Drift.parts(steady.seconds()) < LEAST_PARTS;
    }

    private Finding tooShort(String name) {
        return Finding.word(hold.name(), name, "not measured", "too short a time to tell a drift");
    }

    private Finding flow(Window steady, String name) {
        if (tooShort(steady)) {
            return tooShort(name);
        }
        int meter = steady.channels().flowMeter().index();
        int parts = Drift.parts(steady.seconds());
        double[] middles = new double[parts];
        double[] flows = new double[parts];
        double[] times = steady.times();
        long[] edges = steady.edges(meter);
        double[] lastEdges = steady.lastEdges(meter);
        int from = 0;
        for (int part = 0; part < parts; part++) {
            int to = from;
            while (to < times.length - 1 && times[to] < (part + 1) * steady.seconds() / parts) {
                to++;
            }
            if (edges[to] == edges[from]) {
                return Finding.word(hold.name(), name, "not measured", "the flow was not there all the time");
            }
            middles[part] = (lastEdges[from] + lastEdges[to]) / 2;
            double hertz = (edges[to] - edges[from]) / (lastEdges[to] - lastEdges[from]);
            flows[part] = steady.channels().flowMeter().flow(hertz).m3PerSecond();
            from = to;
        }
        double mean = Statistics.mean(flows);
        // K is the same all the time and falls out of the share.
        return finding(name, Drift.perSecond(middles, flows, 0).times(1 / mean), steady, "");
    }

    private Finding amps(Window steady, String name) {
        if (tooShort(steady)) {
            return tooShort(name);
        }
        AnalogChannel channel = steady.channels().required(ChannelRole.SUPPLY_AMPS);
        double[] amps = steady.values(channel);
        double mean = Statistics.mean(amps);
        if (mean < LEAST_AMPS) {
            return Finding.word(hold.name(), name, "not measured", format("%.2f A are too little", mean));
        }
        int parts = Drift.parts(steady.seconds());
        double[] means = Drift.means(steady.times(), amps, parts);
        Uncertain share = Drift.perSecond(
                        Drift.middles(steady.seconds(), parts), means, ConverterStep.stuck(steady, channel))
                .times(1 / mean);
        // An error of the mean makes the share wrong in proportion.
        Uncertain all = share.with(
                Math.abs(share.value()) * channel.calibrationUncertainty(mean) / mean, Double.POSITIVE_INFINITY);
        double spread = Arrays.stream(means).max().orElseThrow()
                - Arrays.stream(means).min().orElseThrow();
        return finding(name, all, steady, format(", %.2f A on average, %.2f A apart at most", mean, spread));
    }

    /** Falls of the current below half of its mean, as a loose plug or brush makes them; empty without much current. */
    private Optional<Finding> dropOuts(Window steady, String name) {
        double[] amps = steady.size() == 0 ? new double[] {0} : steady.values(ChannelRole.SUPPLY_AMPS);
        double mean = Statistics.mean(amps);
        if (mean < LEAST_AMPS) {
            return Optional.empty();
        }
        int falls = 0;
        double away = 0;
        for (int i = 0; i < amps.length; i++) {
            boolean gone = amps[i] < mean / 2;
            falls += gone && (i == 0 || amps[i - 1] >= mean / 2) ? 1 : 0;
            away += gone ? steady.seconds() / (amps.length - 1) : 0;
        }
        return Optional.of(Finding.word(
                hold.name(),
                name,
                falls == 0 ? "none" : Integer.toString(falls),
                format(
                        "below half of %.2f A for %.2f s of %.0f s; shorter ones than a sample are not seen",
                        mean, away, steady.seconds())));
    }

    private Finding finding(String name, Uncertain sharePerSecond, Window steady, String more) {
        return Finding.figure(
                hold.name(),
                name,
                sharePerSecond.times(PER_SECONDS),
                FindingUnit.SHARE,
                format("in 10 minutes, from %.0f s", steady.seconds()) + more);
    }
}
