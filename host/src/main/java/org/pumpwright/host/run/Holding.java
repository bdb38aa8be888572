package org.pumpwright.host.run;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.run.RunEvent.Phase;
import org.pumpwright.host.run.RunEvent.Where;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.Stretch;

/**
 * Carries one hold out. Where a sign of life is asked for, a person must give one in time, or the run ends: nothing runs
 * unattended for long. Confined to the run thread.
 */
final class Holding {
    private static final double TO_ANSWER_SECONDS = 60;

    private final Recorder recorder;
    private final Operator operator;
    private final Hold hold;
    private final double secondsAfter;
    private final Ask stillThere;
    private long askedNanos = -1;
    private long heardNanos = -1;

    Holding(Recorder recorder, Operator operator, Hold hold, double secondsAfter) {
        this.recorder = recorder;
        this.operator = operator;
        this.hold = hold;
        this.secondsAfter = secondsAfter;
        stillThere = new Ask(
                hold.name(),
                "Is somebody at the stand? The run stops in a minute without an answer.",
                List.of(new Ask.Answer("yes", Optional.empty())),
                Map.of());
    }

    void carryOut() throws StandException, RunEnded {
        heardNanos = recorder.last().boardNanos();
        for (int time = 1; time <= hold.times(); time++) {
            long from = recorder.last().boardNanos();
            int place = recorder.place();
            recorder.drive(hold.duty(), hold.rampSeconds());
            waitFor(hold.seconds(), time, hold.duty());
            recorder.done(new Stretch(
                    hold.name(), Stretch.Kind.HOLD, from, recorder.last().boardNanos()));
            proveAmps(recorder.valuesSince(place).supplyAmps());
            if (hold.restSeconds() > 0) {
                recorder.drive(Duty.ZERO, hold.rampSeconds());
                waitFor(hold.restSeconds(), time, Duty.ZERO);
            }
        }
    }

    private void waitFor(double seconds, int time, Duty duty) throws StandException, RunEnded {
        long from = recorder.last().boardNanos();
        while (recorder.next().boardNanos() - from < seconds * 1e9) {
            recorder.show(
                    Phase.HOLDING,
                    new Where(hold.name(), time, Leg.UP, duty),
                    (hold.times() - time) * (hold.seconds() + hold.restSeconds()) + secondsAfter);
            listenForLife(recorder.last().boardNanos());
        }
    }

    private void proveAmps(double amps) throws RunEnded {
        if (amps > hold.endsAboveAmps()) {
            throw new RunEnded(
                    Ending.Kind.UNIT_OUT_OF_BOUNDS,
                    String.format(
                            Locale.ROOT,
                            "%.2f A flowed in step '%s' at %s, allowed are %.2f A: nothing else was tried",
                            amps,
                            hold.name(),
                            hold.duty().print(),
                            hold.endsAboveAmps()));
        }
    }

    private void listenForLife(long now) throws RunEnded {
        if (hold.signOfLifeSeconds() <= 0) {
            return;
        }
        if (askedNanos < 0 && now - heardNanos > hold.signOfLifeSeconds() * 1e9) {
            askedNanos = now;
            operator.ask(stillThere);
            recorder.tell(new RunEvent.Asked(stillThere));
        }
        if (askedNanos >= 0 && operator.answer().isPresent()) {
            askedNanos = -1;
            heardNanos = now;
        }
        if (askedNanos >= 0 && now - askedNanos > TO_ANSWER_SECONDS * 1e9) {
            throw new RunEnded(
                    Ending.Kind.STOPPED_BY_PERSON, "nobody said within a minute that somebody is at the stand");
        }
    }
}
