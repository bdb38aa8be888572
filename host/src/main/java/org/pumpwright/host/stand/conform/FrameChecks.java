package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.Arm;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.Drive;
import org.pumpwright.protocol.FrameEncoder;
import org.pumpwright.protocol.Hello;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.Sample;
import org.pumpwright.protocol.Stream;

/** Counting of frames, and what damaged ones do. Thread-safe. */
final class FrameChecks {
    private static final Duration QUIET = Duration.ofMillis(150);
    private static final int HELLOS = 20;

    private FrameChecks() {}

    static List<Check> all() {
        return List.of(
                new Check("every frame of the board counts the sequence on by one", "2", FrameChecks::sequence),
                new Check("a frame with a bad CRC is neither obeyed nor answered", "2", FrameChecks::badCrc),
                new Check("damaged and overlong frames cost nothing but themselves", "2", FrameChecks::damaged));
    }

    private static String sequence(Trial trial) throws Broken, StandException {
        long before = trial.talk().lost();
        int mark = trial.talk().mark();
        trial.stream(20);
        for (int i = 0; i < HELLOS; i++) {
            trial.ask(new Hello());
        }
        trial.talk().listen(Duration.ofMillis(500));
        long lost = trial.talk().lost() - before;
        int heard = trial.talk().since(mark).size();
        trial.demand(lost == 0, "the sequence jumped: %d frames are missing or out of order among %d", lost, heard);
        trial.demand(heard > HELLOS, "only %d frames came", heard);
        return heard + " frames, none missing";
    }

    private static String badCrc(Trial trial) throws Broken, NotPossible, StandException {
        Conversation talk = trial.talk();
        int mark = talk.mark();
        talk.sendDamaged(Command.of(new Hello()));
        talk.sendDamaged(Command.of(Stream.every(20)));
        talk.listen(QUIET);
        trial.demand(
                talk.since(mark).isEmpty(),
                "silence expected after damaged hello and stream; %s",
                Say.of(talk.since(mark)));
        int armMark = talk.mark();
        talk.sendDamaged(Command.of(new Arm(trial.board().bootId())));
        talk.listen(QUIET);
        trial.demand(
                talk.since(armMark).isEmpty(), "silence expected after a damaged arm; %s", Say.of(talk.since(armMark)));
        return "damaged hello, stream and arm: silence" + badCrcWhileArmed(trial);
    }

    private static String badCrcWhileArmed(Trial trial) throws Broken, StandException {
        try {
            trial.arm();
        } catch (NotPossible e) {
            return " (not tried while armed: " + e.missing() + ")";
        }
        trial.stream(20);
        int mark = trial.talk().mark();
        trial.talk().sendDamaged(Command.of(new Drive(0, Trial.LOW_DUTY, 0)));
        trial.talk().sendDamaged(Command.of(new MakeSafe()));
        trial.talk().listen(QUIET);
        List<Sample> samples = trial.all(Sample.class, mark);
        trial.demand(
                samples.stream().allMatch(sample -> sample.applied().get(0) == 0),
                "a damaged drive was obeyed: drive 0 moved");
        trial.demand(
                !samples.isEmpty() && samples.get(samples.size() - 1).state() == BoardState.ARMED,
                "a damaged make-safe was obeyed, or the samples stopped; %s",
                trial.events(mark));
        trial.demand(
                trial.talk().since(mark).stream().allMatch(heard -> heard.message() instanceof Sample),
                "no answer expected to damaged frames; %s",
                Say.of(trial.talk().since(mark)));
        return "; damaged drive and make-safe while armed: neither obeyed";
    }

    private static String damaged(Trial trial) throws Broken, StandException {
        byte[] stream = FrameEncoder.encode(Stream.every(20), 0);
        List<byte[]> frames = List.of(Damage.stuffing(stream), Damage.cut(stream), Damage.overlong());
        for (byte[] frame : frames) {
            int mark = trial.talk().mark();
            trial.talk().sendBytes(frame);
            Answer answer = trial.ask(new Hello());
            trial.demand(
                    answer.message().filter(Identity.class::isInstance).isPresent(),
                    "identity expected right after a damaged frame; %s",
                    answer.words());
            trial.demand(
                    trial.talk().since(mark).size() == 1,
                    "nothing but the identity expected; %s",
                    Say.of(trial.talk().since(mark)));
        }
        return String.format(Locale.ROOT, "%d damaged frames dropped, the hello behind each answered", frames.size());
    }
}
