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

/** The four safety inputs, each opened while armed. Thread-safe. */
final class InputChecks {
    private static final Duration AFTERWARDS = Duration.ofMillis(400);

    private InputChecks() {}

    static List<Check> all() {
        return List.of(
                check("an open emergency stop", Provocation.Cause.EMERGENCY_STOP, SafeReason.EMERGENCY_STOP, 1),
                check("an open guard", Provocation.Cause.GUARD, SafeReason.GUARD_OPEN, 2),
                check("a low level", Provocation.Cause.LEVEL, SafeReason.LEVEL_LOW, 4),
                check("an override that is in", Provocation.Cause.OVERRIDE, SafeReason.OVERRIDE_IN, 8));
    }

    private static Check check(String what, Provocation.Cause cause, SafeReason reason, int bit) {
        return new Check(
                what + " makes safe, keeps from arming, and arms nothing when it closes",
                "3",
                trial -> opened(trial, cause, reason, bit));
    }

    private static String opened(Trial trial, Provocation.Cause cause, SafeReason reason, int bit)
            throws Broken, NotPossible, StandException {
        trial.needs(cause);
        trial.arm();
        if (trial.board().channels().drives() > 0) {
            trial.drive(Trial.LOW_DUTY, 0);
        }
        trial.stream(10);
        int mark = trial.talk().mark();
        trial.provoke(cause, 0);
        Event event = madeSafe(trial, mark, reason, bit);
        trial.talk().listen(Duration.ofMillis(100));
        ArmChecks.ranSafe(trial, mark, event);
        Sample open = trial.sample();
        int bits = open.inputs().bits();
        trial.demand((bits & bit) == 0, "input bits %d: bit %d should be open", bits, bit);
        double took = firstOpen(trial, mark, event, bit);
        trial.refused(RefusalChecks.wrongBoot(trial), RefuseReason.WRONG_BOOT_ID, 0);
        trial.refused(Command.of(new Arm(trial.board().bootId())), RefuseReason.INPUT_OPEN, bits);
        int closing = trial.talk().mark();
        trial.release(cause);
        boolean shown = trial.sample(
                        closing,
                        sample -> (sample.inputs().bits() & bit) != 0,
                        trial.patience().plusSeconds(1))
                .isPresent();
        trial.demand(shown, "the input was closed again, but the samples do not show it");
        trial.talk().listen(AFTERWARDS);
        trial.demand(
                trial.all(Event.class, mark).stream().noneMatch(each -> each.kind() == EventKind.ARMED)
                        && trial.sample().state() == BoardState.SAFE,
                "it armed by itself when the input closed; %s",
                trial.events(mark));
        return String.format(
                Locale.ROOT,
                "%s, %.0f ms after the first sample that shows it; arm refused with bits %d; closed: it stayed safe",
                Say.of(event),
                took,
                bits);
    }

    private static Event madeSafe(Trial trial, int mark, SafeReason reason, int bit) throws Broken, StandException {
        try {
            return trial.madeSafe(mark, reason, trial.patience());
        } catch (Broken e) {
            boolean shown = trial.all(Sample.class, mark).stream()
                    .anyMatch(sample -> (sample.inputs().bits() & bit) == 0);
            throw new Broken(e.evidence()
                    + (shown
                            ? "; the samples show the open input"
                            : "; no sample shows it open: not opened, or not read"));
        }
    }

    /** How long after the first sample with the input open the event came, in the board's time. */
    private static double firstOpen(Trial trial, int mark, Event event, int bit) throws Broken {
        Sample first = trial.all(Sample.class, mark).stream()
                .filter(sample -> (sample.inputs().bits() & bit) == 0)
                .findFirst()
                .orElseThrow(() -> new Broken("no sample shows the open input"));
        double took = trial.signedMillis(first.time(), event.time());
        trial.demand(
                took <= Trial.SAFE_WITHIN_MILLIS,
                "made safe %.0f ms after a sample showed the open input; %d are allowed",
                took,
                Trial.SAFE_WITHIN_MILLIS);
        return Math.max(0, took);
    }
}
