package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.Arm;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.SafeReason;
import org.pumpwright.protocol.Sample;
import org.pumpwright.protocol.SelfTestPart;

/** The converter, without whose readings no limit is watched. Thread-safe. */
final class ConverterChecks {
    private static final int STILL_MILLIS = 50;
    private static final int PERIOD_MILLIS = 10;

    private ConverterChecks() {}

    static List<Check> all() {
        return List.of(new Check("a converter that stands still locks until a reset", "3", ConverterChecks::still));
    }

    private static String still(Trial trial) throws Broken, NotPossible, StandException {
        if (trial.board().channels().analogs() == 0) {
            throw new NotPossible("the board has no analogue channel");
        }
        trial.needs(Provocation.Cause.CONVERTER);
        trial.needs(Provocation.Cause.RESTART);
        trial.arm();
        trial.drive(Trial.LOW_DUTY, 0);
        trial.stream(PERIOD_MILLIS);
        int mark = trial.talk().mark();
        trial.talk().listen(Duration.ofMillis(100));
        trial.provoke(Provocation.Cause.CONVERTER, 0);
        Event event = locked(trial, mark);
        trial.talk().listen(Duration.ofMillis(100));
        double took = sinceLastReading(trial, mark, event);
        ArmChecks.ranSafe(trial, mark, event);
        trial.release(Provocation.Cause.CONVERTER);
        trial.talk().listen(trial.patience().plusMillis(50));
        int failed = SelfTestPart.CONVERTER.bit();
        trial.refused(Command.of(new Arm(trial.board().bootId())), RefuseReason.LOCKED, failed);
        Sample after = trial.sample();
        trial.demand(after.state() == BoardState.LOCKED, "state locked expected; %s", Say.of(after));
        trial.restart();
        trial.arm();
        return String.format(
                Locale.ROOT, "%s, %.0f ms after the last reading; armed after the reset", Say.of(event), took);
    }

    private static Event locked(Trial trial, int mark) throws Broken, StandException {
        Duration atMost = Duration.ofMillis(STILL_MILLIS + Trial.SAFE_WITHIN_MILLIS)
                .plus(trial.patience())
                .plus(Trial.ON_THE_WAY);
        Event event = trial.event(mark, EventKind.LOCKED, atMost)
                .orElseThrow(() -> new Broken("no event 'locked' within %d ms without a reading; %s"
                        .formatted(atMost.toMillis(), trial.events(mark))));
        trial.demand(
                event.reason() == SafeReason.HARDWARE && event.detail() == SelfTestPart.CONVERTER.bit(),
                "event 'locked: hardware', detail %d expected; %s",
                SelfTestPart.CONVERTER.bit(),
                Say.of(event));
        trial.demand(trial.all(Event.class, mark).size() == 1, "no other event expected; came: %s", trial.events(mark));
        return event;
    }

    /** The last reading is no older than the begin of the last window that holds one, and no younger than its end. */
    private static double sinceLastReading(Trial trial, int mark, Event event) throws Broken {
        Sample last = trial.all(Sample.class, mark).stream()
                .filter(sample -> sample.conversions() > 0)
                .reduce((before, sample) -> sample)
                .orElseThrow(() -> new Broken("no sample with conversions before the converter stood still"));
        double took = trial.signedMillis(last.time(), event.time());
        trial.demand(
                took >= STILL_MILLIS - PERIOD_MILLIS - 5 && took <= STILL_MILLIS + Trial.SAFE_WITHIN_MILLIS + 5,
                "locked %.0f ms after the last sample with a reading; %d ms expected",
                took,
                STILL_MILLIS);
        return took;
    }
}
