package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.Hello;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.SampleKind;
import org.pumpwright.protocol.Stream;

/** Who the board says it is, and whether it hears the right hosts. Thread-safe. */
final class HelloChecks {
    private static final Duration QUIET = Duration.ofMillis(150);
    private static final int OTHER_VERSION = 2;
    private static final byte[] NOTHING = new byte[0];

    private HelloChecks() {}

    static List<Check> all() {
        return List.of(
                new Check("hello is answered with one identity that stays the same", "4.1", HelloChecks::identity),
                new Check("hello of another version is answered", "4.1", HelloChecks::foreignHello),
                new Check("commands of another version are neither obeyed nor answered", "2", HelloChecks::foreign),
                new Check("types of a board are dropped", "4", HelloChecks::looped));
    }

    private static String identity(Trial trial) throws Broken, StandException {
        Identity first = trial.hello();
        for (int i = 0; i < 3; i++) {
            Answer again = trial.ask(new Hello());
            trial.demand(
                    again.message().equals(Optional.of(first)),
                    "the identity changed without a reset: %s, then %s",
                    Say.of(first),
                    again.words());
        }
        return String.format(
                Locale.ROOT,
                "%s, id %s, %d meters, %d drives, %d analogue channels, %d ticks a second",
                Say.of(first),
                first.uniqueId(),
                first.channels().meters(),
                first.channels().drives(),
                first.channels().analogs(),
                first.tickHz());
    }

    private static String foreignHello(Trial trial) throws Broken, StandException {
        List<String> seen = new ArrayList<>();
        for (Command hello : List.of(
                Command.of(new Hello()).ofVersion(OTHER_VERSION),
                Command.of(new Hello()).ofVersion(255).withPayload(new byte[] {1, 2, 3}, "with three bytes"))) {
            Answer answer = trial.talk().ask(hello);
            trial.demand(
                    answer.message().filter(Identity.class::isInstance).isPresent(),
                    "identity expected; %s",
                    answer.words());
            seen.add(answer.words());
        }
        return String.join("; ", seen);
    }

    private static String foreign(Trial trial) throws Broken, StandException {
        List<Command> commands = List.of(
                Command.of(new Stream(20, SampleKind.WHOLE)).ofVersion(OTHER_VERSION),
                Command.of(new MakeSafe()).ofVersion(OTHER_VERSION),
                Command.of(new Stream(20, SampleKind.WHOLE)).ofVersion(0));
        for (Command command : commands) {
            silent(trial, command);
        }
        return commands.size() + " commands of versions 2 and 0: no answer, no samples";
    }

    private static String looped(Trial trial) throws Broken, StandException {
        for (int type : new int[] {0x80, 0x82, 0x84, 0xFF}) {
            silent(trial, Command.raw(type, NOTHING, "type %02xh".formatted(type)));
        }
        return "types 80h, 82h, 84h and FFh: no answer";
    }

    private static void silent(Trial trial, Command command) throws Broken, StandException {
        int mark = trial.talk().mark();
        trial.talk().send(command);
        trial.talk().listen(QUIET);
        List<Heard> heard = trial.talk().since(mark);
        trial.demand(heard.isEmpty(), "silence expected after %s; %s", command.words(), Say.of(heard));
    }
}
