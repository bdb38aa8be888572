package org.pumpwright.host.stand.conform;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** What only the whole script can tell. Thread-safe. */
final class AnswerChecks {
    private static final double ANSWER_MILLIS = 50;
    /** A USB adapter may hold bytes back for 16 ms on the way, and a PC is no clock. */
    private static final double ON_THE_WAY_MILLIS = 25;

    private static final double MOST = 0.95;

    private AnswerChecks() {}

    static List<Check> all() {
        return List.of(
                new Check("quick commands are answered within 50 ms", "6", AnswerChecks::inTime),
                new Check("the board says nothing that the protocol does not allow", "4", AnswerChecks::sound));
    }

    private static String inTime(Trial trial) throws Broken, NotPossible {
        List<Long> nanos = new ArrayList<>(trial.talk().answerNanos());
        if (nanos.isEmpty()) {
            throw new NotPossible("no command was answered");
        }
        Collections.sort(nanos);
        double most = nanos.get((int) (MOST * (nanos.size() - 1))) / 1e6;
        double longest = nanos.get(nanos.size() - 1) / 1e6;
        trial.demand(
                most <= ANSWER_MILLIS + ON_THE_WAY_MILLIS,
                "95 of 100 answers came within %.0f ms, the longest took %.0f ms",
                most,
                longest);
        return String.format(
                Locale.ROOT,
                "%d answers, 95 of 100 within %.1f ms by our time, the longest %.0f ms",
                nanos.size(),
                most,
                longest);
    }

    private static String sound(Trial trial) throws Broken {
        int unsound = trial.talk().unsound();
        trial.demand(unsound == 0, "%d frames had a type, a length or a value that version 1 does not know", unsound);
        return "every frame that came through was one of version 1, every value in its range";
    }
}
