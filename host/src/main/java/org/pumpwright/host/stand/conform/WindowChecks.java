package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.PulseIntervals;
import org.pumpwright.protocol.PulseWindow;
import org.pumpwright.protocol.Sample;
import org.pumpwright.protocol.Windows;

/** Pulse windows against themselves and against the samples of the same time. Thread-safe. */
final class WindowChecks {
    private static final int PERIOD_MILLIS = 100;
    private static final int METER_HZ = 100;
    private static final long MASK_U32 = 0xFFFF_FFFFL;

    private WindowChecks() {}

    static List<Check> all() {
        return List.of(new Check("pulse windows agree with the samples", "4.13", WindowChecks::windows));
    }

    private static String windows(Trial trial) throws Broken, NotPossible, StandException {
        int meters = trial.board().channels().meters();
        if (meters == 0) {
            throw new NotPossible("the board has no meter");
        }
        boolean turned = turn(trial);
        trial.stream(10);
        trial.talk().listen(Duration.ofMillis(200));
        int mark = trial.talk().mark();
        trial.acknowledged(new Windows(PERIOD_MILLIS));
        trial.talk().listen(Duration.ofMillis(6 * PERIOD_MILLIS));
        List<Sample> samples = trial.all(Sample.class, mark);
        int edges = 0;
        for (int meter = 0; meter < meters; meter++) {
            int number = meter;
            List<PulseWindow> own = trial.all(PulseWindow.class, mark).stream()
                    .filter(window -> window.meter() == number)
                    .toList();
            trial.demand(
                    own.size() >= 4,
                    "meter %d: about 6 windows of 100 ms in 0.6 s expected; %d came",
                    meter,
                    own.size());
            edges += oneMeter(trial, own, samples);
        }
        trial.acknowledged(new Windows(0));
        if (turned) {
            trial.release(Provocation.Cause.METER_HZ);
        }
        mark = trial.talk().mark();
        trial.talk().listen(Duration.ofMillis(PERIOD_MILLIS + 50));
        trial.demand(trial.all(PulseWindow.class, mark).isEmpty(), "windows still come after period 0");
        return edges == 0
                ? "windows in time and empty; no meter turned, so their sums are not shown"
                : String.format(Locale.ROOT, "%d edges: counts, sums and intervals agree, period and end too", edges);
    }

    private static boolean turn(Trial trial) throws Broken, StandException {
        try {
            trial.provoke(Provocation.Cause.METER_HZ, METER_HZ);
            return true;
        } catch (NotPossible noControl) {
            try {
                trial.arm();
                trial.drive(Trial.LOW_DUTY, 0);
            } catch (NotPossible notArmed) {
                // Then the meters stand still, and the windows must say so.
                return false;
            }
            return false;
        }
    }

    private static int oneMeter(Trial trial, List<PulseWindow> windows, List<Sample> samples) throws Broken {
        int edges = 0;
        for (int i = 1; i < windows.size(); i++) {
            PulseWindow before = windows.get(i - 1);
            PulseWindow window = windows.get(i);
            trial.demand(
                    window.begin() == before.end(),
                    "a window begins at %d, the one before ended at %d",
                    window.begin(),
                    before.end());
            double millis = trial.millis(window.begin(), window.end());
            trial.demand(Math.abs(millis - PERIOD_MILLIS) <= 6, "a window of 100 ms is %.1f ms long", millis);
            itself(trial, before, window);
            counted(trial, window, samples);
            edges += window.edges();
        }
        return edges;
    }

    private static void itself(Trial trial, PulseWindow before, PulseWindow window) throws Broken {
        PulseIntervals intervals = window.intervals();
        if (window.edges() == 0) {
            trial.demand(
                    intervals.count() == 0 && intervals.sum() == 0 && window.firstEdge() == 0 && window.lastEdge() == 0,
                    "no edges, but intervals or edge times in the window that ends at %d",
                    window.end());
            return;
        }
        if (before.edges() == 0) {
            return;
        }
        trial.demand(
                intervals.count() == window.edges(),
                "%d edges with an edge before them end %d intervals",
                window.edges(),
                intervals.count());
        long sum = (window.lastEdge() - before.lastEdge()) & MASK_U32;
        trial.demand(intervals.sum() == sum, "sum of intervals %d; from edge to edge %d", intervals.sum(), sum);
        double mean = (double) sum / intervals.count();
        trial.demand(
                intervals.least() <= mean && mean <= intervals.most(),
                "mean interval %.1f is outside least %d and most %d",
                mean,
                intervals.least(),
                intervals.most());
        double squares = unsigned(intervals.squares());
        double lagged = unsigned(intervals.lagged());
        trial.demand(
                squares >= mean * sum * 0.999_999 && lagged <= squares + (double) intervals.most() * intervals.most(),
                "squares %.0f or lagged %.0f do not fit a mean of %.1f",
                squares,
                lagged,
                mean);
        if (before.intervals().count() > 0) {
            double reference =
                    (double) before.intervals().sum() / before.intervals().count();
            trial.demand(
                    Math.abs(intervals.reference() - reference) <= 1,
                    "reference %d; the mean of the window before is %.1f",
                    intervals.reference(),
                    reference);
        }
    }

    private static double unsigned(long value) {
        return value >= 0 ? value : value + 0x1p64;
    }

    /** The count at the window's ends lies between those of the samples around them. */
    private static void counted(Trial trial, PulseWindow window, List<Sample> samples) throws Broken {
        Optional<Long> most = apart(
                trial,
                lastBefore(trial, samples, window.begin()),
                firstAfter(trial, samples, window.end()),
                window.meter());
        Optional<Long> least = apart(
                trial,
                firstAfter(trial, samples, window.begin()),
                lastBefore(trial, samples, window.end()),
                window.meter());
        if (most.isPresent() && least.isPresent()) {
            trial.demand(
                    window.edges() >= least.get() && window.edges() <= most.get(),
                    "meter %d: %d edges in the window, %d to %d by the samples",
                    window.meter(),
                    window.edges(),
                    least.get(),
                    most.get());
        }
    }

    private static Optional<Sample> lastBefore(Trial trial, List<Sample> samples, long time) {
        List<Sample> before = new ArrayList<>(samples);
        before.removeIf(sample -> trial.signedMillis(sample.time(), time) < 0);
        return before.isEmpty() ? Optional.empty() : Optional.of(before.get(before.size() - 1));
    }

    private static Optional<Sample> firstAfter(Trial trial, List<Sample> samples, long time) {
        return samples.stream()
                .filter(sample -> trial.signedMillis(time, sample.time()) >= 0)
                .findFirst();
    }

    private static Optional<Long> apart(Trial trial, Optional<Sample> from, Optional<Sample> to, int meter) {
        if (from.isEmpty() || to.isEmpty() || trial.board().channels().meters() <= meter) {
            return Optional.empty();
        }
        long begin = from.get().meters().get(meter).count();
        long end = to.get().meters().get(meter).count();
        return Optional.of((end - begin) & MASK_U32);
    }
}
