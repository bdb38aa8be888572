package org.pumpwright.host.run;

import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.Ramp;
import org.pumpwright.host.plan.Step;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.run.RunEvent.Phase;
import org.pumpwright.host.run.RunEvent.Where;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Journal;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;

/**
 * One run of a plan on an opened stand. Times are the board's own, so a busy PC changes nothing that is measured.
 *
 * <p>Every ending, good or bad, takes the {@link SafePath}; nothing else ends a run. Confined to the run thread.
 */
public final class PlanRun {
    private static final double REST_SECONDS = 1.5;

    private final Stand stand;
    private final Plan plan;
    private final RunListener listener;
    private final StopButton stop;
    private final Operator operator;
    private final Journal journal;

    /**
     * @param stand opened
     * @param plan what to do
     * @param listener hears how it goes
     * @param stop may be pressed from any thread
     * @param operator answers the plan's questions
     * @param journal writes down what is measured, at once
     */
    public PlanRun(Stand stand, Plan plan, RunListener listener, StopButton stop, Operator operator, Journal journal) {
        this.stand = stand;
        this.plan = plan;
        this.listener = listener;
        this.stop = stop;
        this.operator = operator;
        this.journal = journal;
    }

    /** Carries the plan out. Never throws for trouble with stand or unit: that is an ending, with what was measured. */
    public RunOutcome carryOut() {
        stop.connect(stand);
        Recorder recorder = new Recorder(stand, plan, listener, stop, journal);
        Ending ending = null;
        SafeState safe;
        try {
            carryOut(recorder);
            ending = new Ending(Ending.Kind.COMPLETED, "every step of the plan was carried out");
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
        Trace trace = recorder.trace();
        RunOutcome outcome = new RunOutcome(trace, ending, safe, SampleGaps.lost(trace));
        try {
            listener.heard(new RunEvent.Ended(ending, safe));
        } catch (RuntimeException e) {
            // The run is over and safe: whoever failed to hear of it must not cost its data.
            return outcome;
        }
        return outcome;
    }

    private void carryOut(Recorder recorder) throws StandException, RunEnded {
        recorder.arm();
        recorder.tell(new RunEvent.Began(plan.points().size(), plan.leastSeconds()));
        rest(recorder);
        Asking asking = new Asking(recorder, operator);
        double left = plan.leastSeconds();
        for (Step step : plan.steps()) {
            left -= step.leastSeconds();
            recorder.tell(new RunEvent.StepBegan(step));
            if (step instanceof Sweep sweep) {
                new Sweeping(recorder, asking, sweep, left).carryOut();
            } else if (step instanceof Ramp ramp) {
                new Ramping(recorder, ramp, left).carryOut();
            } else if (step instanceof Hold hold) {
                new Holding(recorder, operator, hold, left).carryOut();
            } else if (step instanceof Ask ask) {
                asking.carryOut(ask);
            }
        }
    }

    /** The stand's zeros: supply switched through, nothing driven. */
    private void rest(Recorder recorder) throws StandException, RunEnded {
        long from = recorder.last().boardNanos();
        Where nowhere = new Where("", 1, Leg.UP, Duty.ZERO);
        while (recorder.next().boardNanos() - from < REST_SECONDS * 1e9) {
            recorder.show(Phase.RESTING, nowhere, plan.leastSeconds());
        }
        recorder.done(
                new Stretch("rest", Stretch.Kind.REST, from, recorder.last().boardNanos()));
        recorder.tell(new RunEvent.Rested(recorder.trace()));
    }

    private static Ending.Kind kind(Trouble trouble) {
        return switch (trouble) {
            case REFUSED -> Ending.Kind.STAND_UNFIT;
            case INTERRUPTED -> Ending.Kind.STOPPED_BY_PERSON;
            default -> Ending.Kind.STAND_LOST;
        };
    }
}
