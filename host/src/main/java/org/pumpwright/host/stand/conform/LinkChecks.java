package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.Hello;
import org.pumpwright.protocol.KeepAlive;
import org.pumpwright.protocol.MessageType;
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.SafeReason;
import org.pumpwright.protocol.Sample;

/** What the board does with and without signs of life from its host. Thread-safe. */
final class LinkChecks {
    private static final long LONGEST_MILLIS = 1000;
    private static final Duration BEAT = Duration.ofMillis(100);
    private static final int BEATS = 6;

    private LinkChecks() {}

    static List<Check> all() {
        return List.of(
                new Check("a lost link makes safe within its time, driving or not", "3", LinkChecks::lost),
                new Check("damaged, foreign and looped-back frames are no sign of life", "4", LinkChecks::noSigns),
                new Check("keep-alive alone holds it armed", "4.5", LinkChecks::held),
                new Check("a refused frame is a sign of life", "4.5", LinkChecks::refusedHolds),
                new Check("once safe it never arms by itself", "3", LinkChecks::neverByItself));
    }

    private static String lost(Trial trial) throws Broken, NotPossible, StandException {
        return lose(trial, () -> {});
    }

    private static String noSigns(Trial trial) throws Broken, NotPossible, StandException {
        Conversation talk = trial.talk();
        String seen = lose(trial, () -> {
            talk.sendDamaged(Command.of(new KeepAlive()));
            talk.send(Command.of(new KeepAlive()).ofVersion(2));
            talk.send(Command.raw(MessageType.ACKNOWLEDGE.code(), new byte[3], "acknowledge"));
        });
        return "with such frames every 100 ms: " + seen;
    }

    /** Something that is sent again and again while the board waits for its host. */
    @FunctionalInterface
    private interface Noise {
        void make() throws StandException;
    }

    private static String lose(Trial trial, Noise noise) throws Broken, NotPossible, StandException {
        long limit = trial.limits().linkTimeOutMs();
        trial.arm();
        if (trial.board().channels().drives() > 0) {
            trial.drive(Trial.LOW_DUTY, 0);
        }
        trial.stream(10);
        trial.talk().stayAlive(false);
        Sample last = trial.sample();
        int mark = trial.talk().mark();
        trial.talk().send(Command.of(new KeepAlive()));
        long sent = trial.talk().nanoTime();
        Optional<Heard> news = Optional.empty();
        while (news.isEmpty() && trial.talk().nanoTime() - sent < (limit + LONGEST_MILLIS) * 1_000_000) {
            noise.make();
            news = trial.talk().await(mark, heard -> heard.message() instanceof Event, BEAT);
        }
        if (news.isEmpty() || !(news.get().message() instanceof Event event)) {
            throw new Broken("%d ms after the last frame there is no event, and the board is %s"
                    .formatted(limit + LONGEST_MILLIS, Say.of(trial.sample().state())));
        }
        trial.demand(
                event.reason() == SafeReason.LINK_LOST, "event 'made safe: link lost' expected; %s", Say.of(event));
        double board = trial.millis(last.time(), event.time());
        double ours = (news.get().nanos() - sent) / 1e6;
        double slack = Trial.SAFE_WITHIN_MILLIS + Trial.ON_THE_WAY.toMillis();
        trial.demand(
                board >= limit - 5 && board <= limit + slack,
                "made safe %.0f ms after the last frame by the board's time; its link time-out is %d ms",
                board,
                limit);
        trial.demand(
                ours <= Math.max(LONGEST_MILLIS, limit + slack),
                "made safe %.0f ms after the last frame by our time; a second is allowed",
                ours);
        trial.talk().listen(Duration.ofMillis(100));
        ArmChecks.ranSafe(trial, mark, event);
        return String.format(
                Locale.ROOT,
                "made safe %.0f ms after the last frame by the board's time, %.0f ms by ours; limit %d ms",
                board,
                ours,
                limit);
    }

    private static String held(Trial trial) throws Broken, NotPossible, StandException {
        trial.arm();
        trial.stream(100);
        return hold(trial, () -> {}, "1.2 s with nothing but a keep-alive every 250 ms");
    }

    private static String refusedHolds(Trial trial) throws Broken, NotPossible, StandException {
        trial.arm();
        trial.stream(100);
        trial.talk().stayAlive(false);
        Command unknown = Command.raw(0x7F, new byte[0], "type 7fh");
        return hold(
                trial,
                () -> {
                    try {
                        trial.refused(unknown, RefuseReason.UNKNOWN_TYPE, 0x7F);
                    } catch (Broken e) {
                        // Seen by its own check; here only the state counts.
                        return;
                    }
                },
                "1.2 s with nothing but refused frames");
    }

    private static String hold(Trial trial, Noise noise, String words) throws Broken, StandException {
        int mark = trial.talk().mark();
        for (int beat = 0; beat < BEATS; beat++) {
            noise.make();
            trial.talk().listen(Duration.ofMillis(200));
        }
        trial.demand(trial.all(Event.class, mark).isEmpty(), "no event expected; %s", trial.events(mark));
        List<Sample> samples = trial.all(Sample.class, mark);
        trial.demand(
                !samples.isEmpty() && samples.stream().allMatch(sample -> sample.state() == BoardState.ARMED),
                "armed throughout expected; %s",
                Say.of(trial.talk().since(mark)));
        return "armed throughout " + words;
    }

    private static String neverByItself(Trial trial) throws Broken, NotPossible, StandException {
        trial.arm();
        trial.talk().stayAlive(false);
        trial.stream(50);
        int mark = trial.talk().mark();
        trial.madeSafe(
                mark, SafeReason.LINK_LOST, Duration.ofMillis(trial.limits().linkTimeOutMs() + 100));
        mark = trial.talk().mark();
        trial.talk().stayAlive(true);
        for (int i = 0; i < 2; i++) {
            trial.ask(new Hello());
            trial.talk().listen(Duration.ofMillis(250));
        }
        trial.demand(
                trial.all(Event.class, mark).stream().noneMatch(event -> event.kind() == EventKind.ARMED)
                        && trial.all(Sample.class, mark).stream().allMatch(sample -> sample.state() == BoardState.SAFE),
                "it left safe without an arm once the host was back; %s",
                trial.events(mark));
        return "safe for half a second after the host came back with keep-alives and hellos";
    }
}
