package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.Arm;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.Drive;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.SafeReason;
import org.pumpwright.protocol.Sample;
import org.pumpwright.protocol.SelfTestPart;

/** The contactor's proof, with its feedback held against it. Thread-safe. */
final class ContactorChecks {
    private static final Duration PROOF = Duration.ofMillis(Trial.PROOF_MILLIS + Trial.SAFE_WITHIN_MILLIS);

    private ContactorChecks() {}

    static List<Check> all() {
        return List.of(
                new Check("a contactor that opens while armed makes safe", "3", ContactorChecks::opens),
                new Check(
                        "a contactor that does not close makes safe within its proof", "3", ContactorChecks::stuckOpen),
                new Check("a contactor that is closed already keeps from arming", "5", ContactorChecks::closed),
                new Check("a contactor that stays closed locks until a reset", "3", ContactorChecks::welded));
    }

    private static String opens(Trial trial) throws Broken, NotPossible, StandException {
        trial.needs(Provocation.Cause.FEEDBACK);
        trial.arm();
        int mark = trial.talk().mark();
        trial.provoke(Provocation.Cause.FEEDBACK, 0);
        Event event = trial.madeSafe(mark, SafeReason.CONTACTOR, trial.patience());
        trial.demand(event.detail() == 1, "detail 1 expected; %s", Say.of(event));
        return Say.of(event);
    }

    private static String stuckOpen(Trial trial) throws Broken, NotPossible, StandException {
        trial.provoke(Provocation.Cause.FEEDBACK, 0);
        trial.talk().listen(trial.patience());
        trial.stream(10);
        Sample before = trial.sample();
        int mark = trial.talk().mark();
        trial.acknowledged(new Arm(trial.board().bootId()));
        trial.talk().stayAlive(true);
        Event event = trial.madeSafe(mark, SafeReason.CONTACTOR, PROOF);
        trial.demand(event.detail() == 0, "detail 0 expected; %s", Say.of(event));
        double took = trial.millis(before.time(), event.time());
        trial.demand(
                took >= Trial.PROOF_MILLIS - 5
                        && took <= PROOF.plus(Trial.ON_THE_WAY).toMillis(),
                "made safe %.0f ms after arm; the proof has %d ms",
                took,
                Trial.PROOF_MILLIS);
        trial.demand(
                trial.all(Sample.class, mark).stream().anyMatch(sample -> sample.state() == BoardState.PROVING)
                        && trial.all(Sample.class, mark).stream()
                                .noneMatch(sample -> sample.state() == BoardState.ARMED),
                "state proving, and never armed, expected; %s",
                Say.of(trial.talk().since(mark)));
        return String.format(Locale.ROOT, "proving, then %s, %.0f ms after arm", Say.of(event), took);
    }

    private static String closed(Trial trial) throws Broken, NotPossible, StandException {
        trial.needs(Provocation.Cause.FEEDBACK);
        // Until the contactor's release is proven, a closed feedback would lock the board.
        trial.talk().listen(PROOF);
        trial.provoke(Provocation.Cause.FEEDBACK, 1);
        trial.talk().listen(trial.patience().plusMillis(50));
        trial.stream(20);
        int bits = trial.sample().inputs().bits();
        return trial.refused(Command.of(new Arm(trial.board().bootId())), RefuseReason.CONTACTOR_CLOSED, bits);
    }

    private static String welded(Trial trial) throws Broken, NotPossible, StandException {
        trial.needs(Provocation.Cause.RESTART);
        trial.needs(Provocation.Cause.FEEDBACK);
        trial.arm();
        trial.provoke(Provocation.Cause.FEEDBACK, 1);
        trial.talk().listen(trial.patience());
        trial.stream(20);
        int mark = trial.talk().mark();
        trial.acknowledged(new MakeSafe());
        Event made = trial.madeSafe(mark, SafeReason.HOST_ASKED, Trial.ON_THE_WAY);
        Event event = trial.event(mark, EventKind.LOCKED, PROOF.plus(Trial.ON_THE_WAY))
                .orElseThrow(() -> new Broken("no event 'locked' after 200 ms with the feedback closed"));
        int failed = SelfTestPart.CONTACTOR_FEEDBACK.bit();
        trial.demand(
                event.reason() == SafeReason.HARDWARE && event.detail() == failed,
                "event 'locked: hardware', detail %d expected; %s",
                failed,
                Say.of(event));
        double took = trial.millis(made.time(), event.time());
        trial.demand(
                took >= Trial.PROOF_MILLIS - 5 && took <= PROOF.toMillis() + 5,
                "locked %.0f ms after the contactor was let go; 200 ms expected",
                took);
        trial.release(Provocation.Cause.FEEDBACK);
        trial.talk().listen(trial.patience().plusMillis(100));
        trial.refused(Command.of(new Arm(trial.board().bootId())), RefuseReason.LOCKED, failed);
        trial.refused(Command.of(new Drive(0, 0, 0)), RefuseReason.LOCKED, failed);
        trial.acknowledged(new MakeSafe());
        Sample sample = trial.sample();
        trial.demand(sample.state() == BoardState.LOCKED, "state locked expected; %s", Say.of(sample));
        trial.restart();
        trial.arm();
        return String.format(
                Locale.ROOT,
                "locked %.0f ms after the contactor was let go; arm refused until the reset, then armed",
                took);
    }
}
