package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.BoardClock;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.Limit;
import org.pumpwright.protocol.Limits;
import org.pumpwright.protocol.MeterCount;
import org.pumpwright.protocol.SafeReason;
import org.pumpwright.protocol.Sample;
import org.pumpwright.protocol.Tighten;

/** What a reset must undo, and the roll-overs that follow it. Thread-safe. */
final class ResetChecks {
    private static final double START_PATIENCE_MILLIS = 5000;
    private static final int METER_HZ = 200;
    private static final int PERIOD_MILLIS = 10;
    private static final long MASK_U32 = 0xFFFF_FFFFL;

    private ResetChecks() {}

    static List<Check> all() {
        return List.of(
                new Check(
                        "a reset while driving leaves it safe, silent, and under a new boot id",
                        "3",
                        ResetChecks::reset),
                new Check("a reset brings back the board's own limits", "4.11", ResetChecks::limits),
                new Check("board time and edge counts roll over without a jump", "4.7", ResetChecks::rollOver));
    }

    private static String reset(Trial trial) throws Broken, NotPossible, StandException {
        trial.needs(Provocation.Cause.RESTART);
        trial.arm();
        if (trial.board().channels().drives() > 0) {
            trial.drive(Trial.LOW_DUTY, 0);
        }
        trial.stream(PERIOD_MILLIS);
        trial.talk().listen(Duration.ofMillis(200));
        long boot = trial.board().bootId();
        Event started = trial.restart();
        trial.demand(
                started.number() == 1 && started.reason() == SafeReason.RESET,
                "event 1 'started: reset' expected; %s",
                Say.of(started));
        trial.demand(trial.board().bootId() != boot, "the boot id is still %08x", boot);
        trial.demand(
                trial.board().resetCause().bits() == started.detail(),
                "the event says reset cause %d, the identity %d",
                started.detail(),
                trial.board().resetCause().bits());
        double since = trial.millis(BoardClock.START_TIME, started.time());
        trial.demand(since <= START_PATIENCE_MILLIS, "board time %d at start; FF800000h expected", started.time());
        int mark = trial.talk().mark();
        trial.talk().listen(Duration.ofMillis(250));
        trial.demand(
                trial.all(Sample.class, mark).isEmpty(), "samples still come after a reset: it did not turn them off");
        safe(trial);
        return "%s; new boot id, safe, drives at 0, contactor let go, no samples".formatted(Say.of(started));
    }

    private static void safe(Trial trial) throws Broken, StandException {
        trial.stream(PERIOD_MILLIS);
        List<Sample> samples = trial.samples(Duration.ofMillis(200));
        trial.demand(!samples.isEmpty(), "no samples though asked for");
        for (Sample sample : samples) {
            trial.demand(
                    sample.state() == BoardState.SAFE
                            && sample.applied().stream().allMatch(duty -> duty == 0),
                    "safe with every drive at 0 expected; %s",
                    Say.of(sample));
            trial.demand(!sample.inputs().contactorFeedbackClosed(), "the contactor's feedback is still closed");
            for (MeterCount meter : sample.meters()) {
                long edges = (meter.count() - MeterCount.START_COUNT) & MASK_U32;
                trial.demand(edges < 10_000, "an edge count of %d; FFFFFF00h is where it begins", meter.count());
            }
        }
    }

    private static String limits(Trial trial) throws Broken, NotPossible, StandException {
        trial.restart();
        Limits own = trial.limits();
        long half = own.runTimeMs() / 2;
        LimitChecks.obeyed(trial, Limit.RUN_TIME, half, own.with(Limit.RUN_TIME, half));
        long shorter = Math.max(Limit.LINK_TIME_OUT.lowest(), own.linkTimeOutMs() - 1);
        trial.ask(new Tighten(Limit.LINK_TIME_OUT, shorter));
        trial.restart();
        Limits after = trial.limits();
        trial.demand(after.equals(own), "limits %s expected after the reset; %s", own.values(), after.values());
        return "run time and link time-out tightened; both back after the reset";
    }

    private static String rollOver(Trial trial) throws Broken, NotPossible, StandException {
        trial.restart();
        boolean turned = turn(trial);
        trial.stream(PERIOD_MILLIS);
        Sample first = trial.sample();
        int mark = trial.talk().mark();
        long begin = trial.talk().nanoTime();
        double toGo = trial.signedMillis(first.time(), 0) + 300;
        trial.demand(
                toGo > 0 && toGo < START_PATIENCE_MILLIS * 100,
                "board time %d after a reset is nowhere near its roll-over",
                first.time());
        trial.talk().listen(Duration.ofMillis((long) toGo));
        List<Sample> samples = trial.all(Sample.class, mark);
        trial.demand(!samples.isEmpty(), "no samples came");
        Sample last = samples.get(samples.size() - 1);
        steadyTime(trial, samples);
        double board = trial.millis(samples.get(0).time(), last.time());
        double ours = (trial.talk().nanoTime() - begin) / 1e6;
        trial.demand(
                Math.abs(board - ours) <= 0.03 * ours + 150,
                "%.0f ms of board time went by in %.0f ms of ours",
                board,
                ours);
        trial.demand(
                trial.signedMillis(0, last.time()) >= 0 && last.time() < first.time(),
                "board time did not roll over: %d, then %d",
                first.time(),
                last.time());
        String edges = turned ? steadyCount(trial, samples) : "; no edges to roll over";
        return String.format(
                Locale.ROOT, "board time %08x to %08x in %.0f ms%s", first.time(), last.time(), board, edges);
    }

    private static boolean turn(Trial trial) throws StandException {
        try {
            trial.provoke(Provocation.Cause.METER_HZ, METER_HZ);
            return true;
        } catch (NotPossible e) {
            return false;
        }
    }

    private static void steadyTime(Trial trial, List<Sample> samples) throws Broken {
        for (int i = 1; i < samples.size(); i++) {
            double apart =
                    trial.signedMillis(samples.get(i - 1).time(), samples.get(i).time());
            trial.demand(
                    apart > 0 && apart < 500,
                    "board time jumped from %d to %d between two samples",
                    samples.get(i - 1).time(),
                    samples.get(i).time());
        }
    }

    private static String steadyCount(Trial trial, List<Sample> samples) throws Broken {
        List<Double> intervals = new ArrayList<>();
        List<Sample> moved = new ArrayList<>();
        for (Sample sample : samples) {
            if (moved.isEmpty() || count(moved.get(moved.size() - 1)) != count(sample)) {
                moved.add(sample);
            }
        }
        // The first one may still be from before the meter was turned.
        for (int i = 2; i < moved.size(); i++) {
            intervals.add(interval(moved.get(i - 1), moved.get(i)));
        }
        trial.demand(!intervals.isEmpty(), "the meter is turned, but no edges are counted");
        List<Double> sorted = new ArrayList<>(intervals);
        Collections.sort(sorted);
        double median = sorted.get(sorted.size() / 2);
        for (int i = 0; i < intervals.size(); i++) {
            trial.demand(
                    intervals.get(i) > 0.5 * median && intervals.get(i) < 2 * median,
                    "edge count jumped from %d to %d between two samples of a steady meter",
                    count(moved.get(i + 1)),
                    count(moved.get(i + 2)));
        }
        Sample last = samples.get(samples.size() - 1);
        trial.demand(
                count(last) < MeterCount.START_COUNT, "the edge count did not roll over: it stands at %d", count(last));
        return String.format(
                Locale.ROOT, "; meter 0 counted from %d to %d, no jump", count(samples.get(0)), count(last));
    }

    private static long count(Sample sample) {
        return sample.meters().get(0).count();
    }

    private static double interval(Sample before, Sample after) {
        long edges = (count(after) - count(before)) & MASK_U32;
        long ticks = (after.meters().get(0).lastEdge() - before.meters().get(0).lastEdge()) & MASK_U32;
        return (double) ticks / edges;
    }
}
