package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.Arm;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.SafeReason;
import org.pumpwright.protocol.Sample;

/** The way from safe to armed and back. Thread-safe. */
final class ArmChecks {
    private ArmChecks() {}

    static List<Check> all() {
        return List.of(
                new Check("arm with another boot id is refused", "4.2", ArmChecks::wrongBoot),
                new Check("arm leads through the contactor's proof to armed, every drive at 0", "3", ArmChecks::arms),
                new Check("arm while armed is acknowledged and changes nothing", "4.2", ArmChecks::again),
                new Check("make-safe is acknowledged and obeyed in every state", "4.6", ArmChecks::makeSafe),
                new Check("make-safe with a payload is obeyed and then refused", "4.6", ArmChecks::longMakeSafe),
                new Check("commands done twice equal commands done once", "6", ArmChecks::twice));
    }

    private static String wrongBoot(Trial trial) throws Broken, StandException {
        trial.stream(20);
        int mark = trial.talk().mark();
        String said = trial.refused(RefusalChecks.wrongBoot(trial), RefuseReason.WRONG_BOOT_ID, 0);
        trial.talk().listen(Duration.ofMillis(250));
        trial.demand(
                trial.all(Sample.class, mark).stream().allMatch(sample -> sample.state() == BoardState.SAFE),
                "the board left the safe state; %s",
                trial.events(mark));
        return said + "; it stayed safe";
    }

    private static String arms(Trial trial) throws Broken, NotPossible, StandException {
        trial.stream(10);
        Sample before = trial.sample();
        int mark = trial.talk().mark();
        Event armed = trial.arm();
        double took = trial.millis(before.time(), armed.time());
        trial.demand(
                took <= Trial.PROOF_MILLIS + Trial.SAFE_WITHIN_MILLIS + Trial.ON_THE_WAY.toMillis(),
                "armed %.0f ms after arm; the proof has 200 ms",
                took);
        trial.demand(armed.reason() == SafeReason.NONE && armed.detail() == 0, "reason 0 expected; %s", Say.of(armed));
        Sample after = trial.sample();
        trial.demand(after.state() == BoardState.ARMED, "state armed expected; %s", Say.of(after));
        trial.demand(
                after.inputs().allClosed() && after.inputs().contactorFeedbackClosed(),
                "armed with input bits %d: every input and the feedback must be closed",
                after.inputs().bits());
        for (Sample sample : trial.all(Sample.class, mark)) {
            trial.demand(
                    sample.applied().stream().allMatch(duty -> duty == 0),
                    "a drive moved by itself; %s",
                    Say.of(sample));
        }
        return String.format(
                Locale.ROOT,
                "armed %.0f ms after arm, feedback closed, drives at 0%s",
                took,
                sawProving(trial, mark) ? ", proving seen on the way" : "");
    }

    private static boolean sawProving(Trial trial, int mark) {
        return trial.all(Sample.class, mark).stream().anyMatch(sample -> sample.state() == BoardState.PROVING);
    }

    private static String again(Trial trial) throws Broken, NotPossible, StandException {
        trial.arm();
        trial.drive(Trial.LOW_DUTY / 2, 0);
        trial.stream(20);
        trial.talk().listen(Duration.ofMillis(150));
        Sample before = trial.sample();
        int mark = trial.talk().mark();
        trial.acknowledged(new Arm(trial.board().bootId()));
        trial.talk().listen(Duration.ofMillis(150));
        Sample after = trial.sample();
        trial.demand(
                after.state() == BoardState.ARMED && after.applied().equals(before.applied()),
                "armed with drive 0 at %d expected; %s",
                before.applied().get(0),
                Say.of(after));
        trial.demand(trial.all(Event.class, mark).isEmpty(), "no event expected; %s", trial.events(mark));
        return "acknowledged; drive 0 stayed at " + after.applied().get(0) + "/65536, no event";
    }

    private static String makeSafe(Trial trial) throws Broken, NotPossible, StandException {
        int mark = trial.talk().mark();
        trial.acknowledged(new MakeSafe());
        trial.demand(trial.all(Event.class, mark).isEmpty(), "no event expected in safe; %s", trial.events(mark));
        proving(trial);
        trial.arm();
        trial.drive(Trial.LOW_DUTY, 0);
        trial.stream(10);
        trial.talk().listen(Duration.ofMillis(100));
        mark = trial.talk().mark();
        trial.acknowledged(new MakeSafe());
        Event event = trial.madeSafe(mark, SafeReason.HOST_ASKED, Trial.ON_THE_WAY);
        trial.talk().listen(Duration.ofMillis(100));
        ranSafe(trial, mark, event);
        return "acknowledged in safe, proving and armed; drives at 0 at once, without a ramp";
    }

    private static String longMakeSafe(Trial trial) throws Broken, NotPossible, StandException {
        trial.arm();
        trial.drive(Trial.LOW_DUTY, 0);
        trial.stream(10);
        trial.talk().listen(Duration.ofMillis(100));
        int mark = trial.talk().mark();
        Command command = Command.of(new MakeSafe()).withPayload(new byte[] {5, 0}, "with 2 bytes");
        String said = trial.refused(command, RefuseReason.WRONG_LENGTH, 2);
        Event event = trial.madeSafe(mark, SafeReason.HOST_ASKED, Trial.ON_THE_WAY);
        trial.talk().listen(Duration.ofMillis(100));
        ranSafe(trial, mark, event);
        return "made safe at once; " + said;
    }

    private static void proving(Trial trial) throws Broken, NotPossible, StandException {
        trial.arm();
        trial.calm();
        int mark = trial.talk().mark();
        int arm = trial.talk().send(Command.of(new Arm(trial.board().bootId())));
        int safe = trial.talk().send(Command.of(new MakeSafe()));
        trial.talk().listen(Duration.ofMillis(400));
        List<Integer> answered = trial.all(Acknowledge.class, mark).stream()
                .map(Acknowledge::answered)
                .toList();
        trial.demand(
                answered.contains(arm) && answered.contains(safe),
                "arm and make-safe right behind it: both acknowledged expected; %s",
                Say.of(trial.talk().since(mark)));
        trial.demand(
                trial.all(Event.class, mark).stream().anyMatch(event -> event.reason() == SafeReason.HOST_ASKED),
                "event 'made safe: host asked' expected while proving; %s",
                trial.events(mark));
        trial.stream(20);
        Sample after = trial.sample();
        trial.demand(after.state() == BoardState.SAFE, "state safe expected; %s", Say.of(after));
    }

    /** Demands that the samples after an event are safe, with every drive at 0. */
    static void ranSafe(Trial trial, int mark, Event event) throws Broken {
        int seen = 0;
        for (Sample sample : trial.all(Sample.class, mark)) {
            double after = trial.signedMillis(event.time(), sample.time());
            if (after < Trial.SAFE_WITHIN_MILLIS) {
                continue;
            }
            seen++;
            trial.demand(
                    sample.state() != BoardState.ARMED
                            && sample.applied().stream().allMatch(duty -> duty == 0),
                    "%.0f ms after the event: safe with every drive at 0 expected; %s",
                    after,
                    Say.of(sample));
        }
        trial.demand(seen > 0, "no sample came after the event");
    }

    private static String twice(Trial trial) throws Broken, NotPossible, StandException {
        int mark = trial.talk().mark();
        trial.arm();
        trial.acknowledged(new Arm(trial.board().bootId()));
        trial.drive(Trial.LOW_DUTY / 2, 0);
        trial.drive(Trial.LOW_DUTY / 2, 0);
        trial.stream(20);
        trial.stream(20);
        trial.acknowledged(new MakeSafe());
        trial.acknowledged(new MakeSafe());
        trial.talk().listen(Duration.ofMillis(200));
        List<EventKind> kinds =
                trial.all(Event.class, mark).stream().map(Event::kind).toList();
        trial.demand(
                kinds.equals(List.of(EventKind.ARMED, EventKind.MADE_SAFE)),
                "one event 'armed' and one 'made safe' expected; %s",
                trial.events(mark));
        List<Sample> samples = trial.samples(Duration.ofMillis(400));
        trial.demand(
                samples.size() >= 15 && samples.size() <= 25,
                "about 20 samples in 400 ms expected; %d came",
                samples.size());
        return "arm, drive, stream and make-safe sent twice: all acknowledged, one event each";
    }
}
