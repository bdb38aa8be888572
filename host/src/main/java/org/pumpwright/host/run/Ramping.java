package org.pumpwright.host.run;

import org.pumpwright.host.plan.Ramp;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.run.RunEvent.Phase;
import org.pumpwright.host.run.RunEvent.Where;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.Stretch;

/**
 * Carries one slow ramp out. The board's own ramp goes in whole 1/65536 a millisecond, 1.5 % a second at the slowest, so a
 * slow one is made of small set points; the samples tell which duty held when. Confined to the run thread.
 */
final class Ramping {
    private static final double TO_BEGIN_SECONDS = 0.5;
    private static final double STEP_SECONDS = 0.1;

    private final Recorder recorder;
    private final Ramp ramp;
    private final double secondsAfter;

    Ramping(Recorder recorder, Ramp ramp, double secondsAfter) {
        this.recorder = recorder;
        this.ramp = ramp;
        this.secondsAfter = secondsAfter;
    }

    void carryOut() throws StandException, RunEnded {
        recorder.drive(ramp.from(), TO_BEGIN_SECONDS);
        waitFor(TO_BEGIN_SECONDS, ramp.from(), Leg.UP);
        leg(ramp.to(), Leg.UP, Stretch.Kind.RAMP_UP);
        if (ramp.back()) {
            leg(ramp.from(), Leg.DOWN, Stretch.Kind.RAMP_DOWN);
        }
        recorder.drive(Duty.ZERO, TO_BEGIN_SECONDS);
        waitFor(TO_BEGIN_SECONDS, Duty.ZERO, Leg.DOWN);
    }

    private void leg(Duty end, Leg leg, Stretch.Kind kind) throws StandException, RunEnded {
        long from = recorder.last().boardNanos();
        double seconds = (ramp.to().percent() - ramp.from().percent()) / ramp.percentPerSecond();
        double begin = (leg == Leg.UP ? ramp.from() : ramp.to()).percent();
        double rate = leg == Leg.UP ? ramp.percentPerSecond() : -ramp.percentPerSecond();
        for (double at = STEP_SECONDS; at < seconds; at += STEP_SECONDS) {
            recorder.drive(Duty.ofPercent(begin + rate * at), STEP_SECONDS);
            waitFor(at - (recorder.last().boardNanos() - from) / 1e9, end, leg);
        }
        recorder.drive(end, STEP_SECONDS);
        waitFor(seconds - (recorder.last().boardNanos() - from) / 1e9, end, leg);
        recorder.done(new Stretch(ramp.name(), kind, from, recorder.last().boardNanos()));
    }

    private void waitFor(double seconds, Duty end, Leg leg) throws StandException, RunEnded {
        long from = recorder.last().boardNanos();
        while (recorder.next().boardNanos() - from < seconds * 1e9) {
            recorder.show(Phase.RAMPING, new Where(ramp.name(), 1, leg, end), secondsAfter);
        }
    }
}
