package org.pumpwright.host.run;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.run.RunEvent.LiveValues;
import org.pumpwright.host.run.RunEvent.Phase;
import org.pumpwright.host.run.RunEvent.Where;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.stand.StandSignal.Cause;
import org.pumpwright.host.stand.StandSignal.MadeSafe;
import org.pumpwright.host.stand.StandSignal.Measured;
import org.pumpwright.host.trace.Answer;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Journal;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.MeterCount;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;

/**
 * The stand as the steps of a plan see it: samples are taken one by one, kept, written down, held against the stop rules,
 * and shown. Confined to the run thread.
 */
final class Recorder {
    /** The contactor has closed and its bounce is over by then; nothing before it is recorded. */
    private static final double CONTACTOR_SECONDS = 0.2;

    private static final double LIVE_SECONDS = 0.25;
    private static final double LIVE_STRETCH_SECONDS = 1.0;
    private static final int SAMPLES_TO_FIND_OUT_WHY = 10;

    /** A host that was away for a while has many waiting; the board's word is among them or behind them. */
    private static final int SAMPLES_THAT_MAY_WAIT = 200;

    private static final Duration WAIT = Duration.ofMillis(100);

    private final Stand stand;
    private final Plan plan;
    private final RunListener listener;
    private final StopButton stop;
    private final Journal journal;
    private final Channels channels;
    private final StopRuleWatch watch;
    private final LiveView view;
    private final List<Sample> samples = new ArrayList<>();
    private final List<PointMark> points = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();
    private final List<Answer> answers = new ArrayList<>();
    private long lastLiveNanos = Long.MIN_VALUE;

    Recorder(Stand stand, Plan plan, RunListener listener, StopButton stop, Journal journal) {
        this.stand = stand;
        this.plan = plan;
        this.listener = listener;
        this.stop = stop;
        this.journal = journal;
        channels = stand.description().channels().withFlowMeter(plan.wiring().meter());
        watch = new StopRuleWatch(plan.stop(), channels);
        view = new LiveView(channels);
    }

    /** Arms, and passes over what the contactor does to the readings. */
    void arm() throws StandException, RunEnded {
        checkStop();
        stand.arm();
        double closed = await().boardSeconds() + CONTACTOR_SECONDS;
        Sample last = await();
        while (last.boardSeconds() < closed) {
            last = await();
        }
        watch.resume(last);
        keep(last);
    }

    /** Makes the stand safe for a while; {@link #arm} ends that. */
    void standSafe() throws RunEnded {
        watch.pause();
        SafeState safe = SafePath.take(stand);
        if (safe == SafeState.LOCKED) {
            throw new RunEnded(Ending.Kind.STAND_UNFIT, "the board locked itself: the contactor may be stuck");
        }
        if (safe != SafeState.CONFIRMED) {
            throw new RunEnded(Ending.Kind.STAND_LOST, "the stand was asked to make safe and did not say that it is");
        }
    }

    /** Keeps the link alive for a moment while the stand is safe. */
    void idle() throws StandException, RunEnded {
        checkStop();
        stand.await(WAIT);
    }

    /** Sets the unit's drive. */
    void drive(Duty duty, double fullSwingSeconds) throws StandException, RunEnded {
        try {
            stand.drive(plan.wiring().drive(), duty, fullSwingSeconds);
        } catch (StandException e) {
            if (e.trouble() == Trouble.REFUSED) {
                // An armed board refuses because it has made safe meanwhile; what it sent before tells why.
                for (int i = 0; i < SAMPLES_THAT_MAY_WAIT; i++) {
                    await();
                }
            }
            throw e;
        }
    }

    /** Takes the next sample, keeps it, and holds it against the plan's stop rules. */
    Sample next() throws StandException, RunEnded {
        Sample sample = await();
        keep(sample);
        watch.check(sample);
        return sample;
    }

    /** Takes the next sample, unless a person or the board ends the run. */
    private Sample await() throws StandException, RunEnded {
        while (true) {
            checkStop();
            Optional<StandSignal> signal = stand.await(WAIT);
            if (signal.isPresent() && signal.get() instanceof Measured measured) {
                return measured.sample();
            }
            if (signal.isPresent() && signal.get() instanceof MadeSafe made) {
                checkStop();
                throw ended(made);
            }
        }
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

    private void keep(Sample sample) {
        samples.add(sample);
        journal.sample(sample);
    }

    /** The newest sample. */
    Sample last() {
        return samples.get(samples.size() - 1);
    }

    int flowMeter() {
        return channels.flowMeter().index();
    }

    MeterCount flowCount(Sample sample) {
        return sample.meters().get(flowMeter());
    }

    /** The place of the newest sample, for {@link #since}. */
    int place() {
        return samples.size() - 1;
    }

    /** The samples from a place on. */
    List<Sample> since(int place) {
        return samples.subList(place, samples.size());
    }

    LiveValues valuesSince(int place) {
        return view.over(since(place));
    }

    void done(PointMark point) {
        points.add(point);
        journal.point(point);
    }

    void done(Stretch stretch) {
        stretches.add(stretch);
        journal.stretch(stretch);
    }

    void done(Answer answer) {
        answers.add(answer);
        journal.answer(answer);
    }

    void tell(RunEvent event) {
        listener.heard(event);
    }

    /** Shows the latest values, a few times a second. */
    void show(Phase phase, Where where, double secondsLeft) {
        Sample last = last();
        if (lastLiveNanos != Long.MIN_VALUE && last.boardNanos() - lastLiveNanos < LIVE_SECONDS * 1e9) {
            return;
        }
        lastLiveNanos = last.boardNanos();
        int from = place();
        while (from > 0 && last.boardSeconds() - samples.get(from - 1).boardSeconds() <= LIVE_STRETCH_SECONDS) {
            from--;
        }
        listener.heard(new RunEvent.Live(phase, where, view.over(since(from)), secondsLeft, samples.get(from), last));
    }

    void checkStop() throws RunEnded {
        Optional<String> why = stop.pressed();
        if (why.isPresent()) {
            throw new RunEnded(Ending.Kind.STOPPED_BY_PERSON, why.get());
        }
    }

    Trace trace() {
        return new Trace(channels, samples, points, stretches, answers);
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
}
