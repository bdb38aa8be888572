package org.pumpwright.host.run;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.PlanPoint;
import org.pumpwright.host.run.RunEvent.LiveValues;
import org.pumpwright.host.run.RunEvent.Phase;
import org.pumpwright.host.signal.SettleDetector;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.stand.StandSignal.Cause;
import org.pumpwright.host.stand.StandSignal.MadeSafe;
import org.pumpwright.host.stand.StandSignal.Measured;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.MeterCount;
import org.pumpwright.host.trace.Trace;

/**
 * One run of a plan on an opened stand. Times are the board's own, so a busy PC changes nothing that is measured.
 *
 * <p>Every ending, good or bad, takes the {@link SafePath}; nothing else ends a run. Confined to the run thread.
 */
public final class PlanRun {
    private static final int PUMP = 0;
    /** The contactor has closed and its bounce is over by then; nothing before it is recorded. */
    private static final double CONTACTOR_SECONDS = 0.2;

    private static final double REST_SECONDS = 1.5;
    private static final double LIVE_SECONDS = 0.25;
    private static final double LIVE_STRETCH_SECONDS = 1.0;
    private static final int SAMPLES_TO_FIND_OUT_WHY = 10;
    private static final Duration WAIT = Duration.ofMillis(100);

    private final Stand stand;
    private final Plan plan;
    private final RunListener listener;
    private final StopButton stop;
    private final Channels channels;
    private final StopRuleWatch watch;
    private final LiveView view;
    private final List<Sample> samples = new ArrayList<>();
    private final List<PointMark> marks = new ArrayList<>();
    private long lastLiveNanos = Long.MIN_VALUE;

    /**
     * @param stand opened
     * @param plan what to do
     * @param listener hears how it goes
     * @param stop may be pressed from any thread
     */
    public PlanRun(Stand stand, Plan plan, RunListener listener, StopButton stop) {
        this.stand = stand;
        this.plan = plan;
        this.listener = listener;
        this.stop = stop;
        channels = stand.description().channels();
        watch = new StopRuleWatch(plan.stop(), channels);
        view = new LiveView(channels);
    }

    /** Carries the plan out. Never throws for trouble with stand or unit: that is an ending, with what was measured. */
    public RunOutcome carryOut() {
        stop.connect(stand);
        Ending ending = null;
        SafeState safe;
        try {
            visitAll();
            ending = new Ending(Ending.Kind.COMPLETED, "every point of the plan was visited");
        } catch (RunEnded e) {
            ending = e.ending();
        } catch (StandException e) {
            ending = new Ending(kind(e.trouble()), e.getMessage());
        } catch (RuntimeException e) {
            ending = new Ending(Ending.Kind.PROGRAM_FAULT, "the program failed: " + e);
        } finally {
            safe = SafePath.take(stand);
        }
        if (safe == SafeState.LOCKED) {
            // The unit was measured well enough; but whoever reads the record must know of the stand.
            ending = new Ending(
                    ending.kind(), ending.reason() + "; after it the board locked itself: the contactor may be stuck");
        }
        RunOutcome outcome =
                new RunOutcome(new Trace(channels, samples, marks), ending, safe, SampleGaps.lost(samples));
        try {
            listener.heard(new RunEvent.Ended(ending, safe));
        } catch (RuntimeException e) {
            // The run is over and safe: whoever failed to hear of it must not cost its data.
            return outcome;
        }
        return outcome;
    }

    private void visitAll() throws StandException, RunEnded {
        checkStop();
        stand.arm();
        listener.heard(new RunEvent.Began(plan.points().size(), secondsFrom(0)));
        rest();
        for (PlanPoint point : plan.points()) {
            visit(point);
        }
    }

    private void rest() throws StandException, RunEnded {
        double closed = take().boardSeconds() + CONTACTOR_SECONDS;
        while (take().boardSeconds() < closed) {
            samples.clear();
        }
        samples.clear();
        double until = next().boardSeconds() + REST_SECONDS;
        while (next().boardSeconds() < until) {
            tell(Phase.RESTING, plan.points().get(0));
        }
    }

    private void visit(PlanPoint point) throws StandException, RunEnded {
        Sample before = samples.get(samples.size() - 1);
        drive(point);
        boolean settled = settle(point, before.boardNanos());
        int firstMeasured = samples.size() - 1;
        boolean enough = measure(point, samples.get(firstMeasured));
        Sample last = samples.get(samples.size() - 1);
        marks.add(new PointMark(
                point.number(),
                point.leg(),
                point.duty(),
                before.boardNanos(),
                samples.get(firstMeasured).boardNanos(),
                last.boardNanos(),
                settled,
                enough));
        LiveValues mean = view.over(samples.subList(firstMeasured, samples.size()));
        listener.heard(new RunEvent.PointDone(point, mean, settled, enough));
    }

    private void drive(PlanPoint point) throws StandException, RunEnded {
        try {
            stand.drive(PUMP, point.duty(), plan.rampSeconds());
        } catch (StandException e) {
            if (e.trouble() == Trouble.REFUSED) {
                // An armed board refuses because it has made safe meanwhile; what it sent before tells why.
                for (int i = 0; i < SAMPLES_TO_FIND_OUT_WHY; i++) {
                    take();
                }
            }
            throw e;
        }
    }

    private boolean settle(PlanPoint point, long setNanos) throws StandException, RunEnded {
        Plan.Settle rule = plan.settle();
        SettleDetector detector = new SettleDetector(rule.flowChangeShare());
        while (true) {
            Sample sample = next();
            MeterCount count = meter(sample);
            detector.addEdges(sample.boardNanos(), count.edges(), count.lastEdgeNanos());
            tell(Phase.SETTLING, point);
            double seconds = (sample.boardNanos() - setNanos) / 1e9;
            boolean longEnough = seconds >= rule.leastSeconds() + plan.rampSeconds();
            if (longEnough && detector.settled()) {
                return true;
            }
            if (seconds >= rule.giveUpSeconds() + plan.rampSeconds()) {
                return false;
            }
        }
    }

    private boolean measure(PlanPoint point, Sample first) throws StandException, RunEnded {
        Plan.Measure rule = plan.measure();
        while (true) {
            Sample sample = next();
            tell(Phase.MEASURING, point);
            double seconds = (sample.boardNanos() - first.boardNanos()) / 1e9;
            long pulses = meter(sample).edges() - meter(first).edges();
            if (seconds >= rule.leastSeconds() && pulses >= rule.leastPulses()) {
                return true;
            }
            // A unit that gives no pulse at all will not give enough by waiting longer.
            if (seconds >= rule.mostSeconds() || (seconds >= rule.leastSeconds() && pulses == 0)) {
                return false;
            }
        }
    }

    private MeterCount meter(Sample sample) {
        return sample.meters().get(channels.flowMeter().index());
    }

    /** Takes the next sample and holds it against the plan's stop rules. */
    private Sample next() throws StandException, RunEnded {
        Sample sample = take();
        watch.check(sample);
        return sample;
    }

    /** Takes the next sample, unless a person or the board ends the run. */
    private Sample take() throws StandException, RunEnded {
        while (true) {
            checkStop();
            Optional<StandSignal> signal = stand.await(WAIT);
            if (signal.isPresent() && signal.get() instanceof Measured measured) {
                samples.add(measured.sample());
                return measured.sample();
            }
            if (signal.isPresent() && signal.get() instanceof MadeSafe made) {
                checkStop();
                throw ended(made);
            }
        }
    }

    private RunEnded ended(MadeSafe made) {
        if (made.cause() == Cause.OVER_CURRENT
                && ampsWithNothingDriven() > plan.stop().supplyAmpsAbove()) {
            return new RunEnded(
                    Ending.Kind.STAND_UNFIT,
                    made.words()
                            + ", and as much is read with the contactor let go: check the current sensor and its wires");
        }
        return switch (made.cause()) {
            case OVER_CURRENT -> new RunEnded(Ending.Kind.UNIT_OUT_OF_BOUNDS, made.words());
            case LEVEL_LOW, CONTACTOR, RUN_TIME, OVER_PRESSURE, DEAD_HEAD, DRY_RUN, OVER_VOLTAGE, HARDWARE ->
                new RunEnded(Ending.Kind.STAND_UNFIT, made.words());
            case HOST, LINK_LOST, EMERGENCY_STOP, GUARD_OPEN, OVERRIDE_IN, UNKNOWN ->
                new RunEnded(Ending.Kind.STOPPED_BY_BOARD, made.words());
        };
    }

    /** What the current sensor reads once the board is safe and the contactor has opened; 0 when it can't be heard. */
    private double ampsWithNothingDriven() {
        double amps = 0;
        try {
            for (int heard = 0; heard < SAMPLES_TO_FIND_OUT_WHY; ) {
                Optional<StandSignal> signal = stand.await(WAIT);
                if (signal.isPresent() && signal.get() instanceof Measured measured) {
                    amps = channels.required(ChannelRole.SUPPLY_AMPS).read(measured.sample());
                    heard++;
                }
            }
        } catch (StandException e) {
            // The board's own reason is what counts; this would only have told more.
            return 0;
        }
        return amps;
    }

    private static Ending.Kind kind(Trouble trouble) {
        return switch (trouble) {
            case REFUSED -> Ending.Kind.STAND_UNFIT;
            case INTERRUPTED -> Ending.Kind.STOPPED_BY_PERSON;
            default -> Ending.Kind.STAND_LOST;
        };
    }

    private void checkStop() throws RunEnded {
        Optional<String> why = stop.pressed();
        if (why.isPresent()) {
            throw new RunEnded(Ending.Kind.STOPPED_BY_PERSON, why.get());
        }
    }

    private void tell(Phase phase, PlanPoint point) {
        Sample last = samples.get(samples.size() - 1);
        if (last.boardNanos() - lastLiveNanos < LIVE_SECONDS * 1e9 && lastLiveNanos != Long.MIN_VALUE) {
            return;
        }
        lastLiveNanos = last.boardNanos();
        int from = samples.size() - 1;
        while (from > 0 && last.boardSeconds() - samples.get(from - 1).boardSeconds() <= LIVE_STRETCH_SECONDS) {
            from--;
        }
        LiveValues now = view.over(samples.subList(from, samples.size()));
        listener.heard(new RunEvent.Live(phase, point, now, secondsFrom(marks.size())));
    }

    private double secondsFrom(int pointsDone) {
        double each = plan.rampSeconds()
                + plan.settle().leastSeconds()
                + plan.measure().leastSeconds();
        return (plan.points().size() - pointsDone) * each;
    }
}
