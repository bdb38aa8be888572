package org.pumpwright.host.stand.conform;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.wire.Line;
import org.pumpwright.protocol.Identity;

/** Tries a board against the protocol, check by check. Confined to the run thread. */
public final class Conformance {
    /** The version of the protocol that is tried. */
    public static final String SPECIFICATION = "wire protocol version 1, frozen 2026-11-25";

    private final Trial trial;

    private Conformance(Trial trial) {
        this.trial = trial;
    }

    /**
     * What came out. Thread-safe.
     *
     * @param line where the board is
     * @param board who it says it is
     * @param checks every check in its order
     */
    public record Finding(String line, String board, List<CheckResult> checks) {
        public Finding {
            checks = List.copyOf(checks);
        }

        /** True when no check was broken; one that was not possible is no proof of anything. */
        public boolean conforms() {
            return broken().isEmpty();
        }

        /** The checks that were broken. */
        public List<CheckResult> broken() {
            return with(Outcome.BROKEN);
        }

        /** The checks with an outcome. */
        public List<CheckResult> with(Outcome outcome) {
            return checks.stream().filter(check -> check.outcome() == outcome).toList();
        }
    }

    /**
     * Carries the whole script out and leaves the board safe.
     *
     * @param line to the board, open
     * @param provoker makes things happen to the board
     * @param told hears of each check when it is over
     * @throws StandException when no board answers, or the line is lost
     */
    public static Finding of(Line line, Provoker provoker, Consumer<CheckResult> told) throws StandException {
        return of(line, provoker, told, name -> true);
    }

    /**
     * The same, but it can be stopped: then the board is made safe at once and asked whether it is.
     *
     * @throws StandException of kind {@code INTERRUPTED} when it was stopped
     */
    public static Finding of(Line line, Provoker provoker, Consumer<CheckResult> told, TrialStop stop)
            throws StandException {
        Trial trial = new Trial(stop.on(line), provoker);
        try {
            return of(line.name(), trial, told, name -> true);
        } catch (StandException e) {
            if (stop.pressed().isPresent()) {
                stop.leave();
                stop.left(trial.leftSafe());
            }
            throw e;
        }
    }

    /** The same with some of the checks only. */
    static Finding of(Line line, Provoker provoker, Consumer<CheckResult> told, Predicate<String> wanted)
            throws StandException {
        return of(line.name(), new Trial(line, provoker), told, wanted);
    }

    private static Finding of(String line, Trial trial, Consumer<CheckResult> told, Predicate<String> wanted)
            throws StandException {
        Identity board = trial.hello();
        trial.startedByItself();
        List<CheckResult> results = new ArrayList<>();
        Conformance script = new Conformance(trial);
        for (Check check :
                checks().stream().filter(each -> wanted.test(each.name())).toList()) {
            CheckResult result = script.carryOut(check);
            results.add(result);
            told.accept(result);
        }
        trial.calm();
        return new Finding(line, words(board), results);
    }

    /** The names of all checks, in their order. */
    public static List<String> names() {
        return checks().stream().map(Check::name).toList();
    }

    private static List<Check> checks() {
        return Stream.of(
                        HelloChecks.all(),
                        FrameChecks.all(),
                        RefusalChecks.all(),
                        SampleChecks.all(),
                        ArmChecks.all(),
                        DriveChecks.all(),
                        LinkChecks.all(),
                        EventChecks.all(),
                        WindowChecks.all(),
                        MemoryChecks.all(),
                        InputChecks.all(),
                        ContactorChecks.all(),
                        TripChecks.all(),
                        ConverterChecks.all(),
                        LimitChecks.all(),
                        ResetChecks.all(),
                        AnswerChecks.all())
                .flatMap(List::stream)
                .toList();
    }

    private CheckResult carryOut(Check check) throws StandException {
        trial.calm();
        CheckResult result = tried(check);
        trial.releaseAll();
        if (result.outcome() == Outcome.BROKEN) {
            trial.startAfresh();
        }
        if (trial.startedByItself()) {
            trial.hello();
            return new CheckResult(
                    check.name(), check.section(), Outcome.BROKEN, "the board started anew by itself meanwhile");
        }
        return result;
    }

    private CheckResult tried(Check check) throws StandException {
        try {
            return new CheckResult(
                    check.name(), check.section(), Outcome.HELD, check.body().tried(trial));
        } catch (Broken e) {
            return new CheckResult(check.name(), check.section(), Outcome.BROKEN, e.evidence());
        } catch (NotPossible e) {
            return new CheckResult(check.name(), check.section(), Outcome.NOT_POSSIBLE, e.missing());
        } finally {
            trial.talk().stayAlive(false);
        }
    }

    private static String words(Identity board) {
        return String.format(
                Locale.ROOT,
                "%s, firmware %s, id %s, boot id %08x",
                board.kind(),
                board.firmware(),
                board.uniqueId(),
                board.bootId());
    }
}
