package org.pumpwright.host.stand.conform;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.Limit;
import org.pumpwright.protocol.Limits;
import org.pumpwright.protocol.ReadLimits;
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.Tighten;

/** The table of limits: read, and made tighter but never wider. Thread-safe. */
final class LimitChecks {
    private LimitChecks() {}

    static List<Check> all() {
        return List.of(
                new Check("limits are told, and stay the same", "4.11", LimitChecks::read),
                new Check("no limit can be widened", "4.11", LimitChecks::widen),
                new Check("a limit can be set to what it is, and tighter", "4.11", LimitChecks::tighten));
    }

    private static String read(Trial trial) throws Broken, StandException {
        Limits limits = trial.limits();
        Answer again = trial.ask(new ReadLimits());
        trial.demand(again.message().equals(Optional.of(limits)), "the same limits expected; %s", again.words());
        return limits.values().toString();
    }

    private static String widen(Trial trial) throws Broken, StandException {
        Limits limits = trial.limits();
        int tried = 0;
        for (Limit limit : Limit.values()) {
            long present = limits.of(limit);
            if (present == limit.widest()) {
                continue;
            }
            for (long wider : new long[] {limit.widest(), present + direction(limit)}) {
                trial.refused(
                        Command.of(new Tighten(limit, wider)).noted("%s to %d".formatted(limit.words(), wider)),
                        RefuseReason.WOULD_WIDEN,
                        (int) present);
                tried++;
            }
        }
        trial.demand(
                trial.limits().equals(limits),
                "the limits changed all the same: %s",
                trial.limits().values());
        return tried + " wider values for " + Limit.COUNT + " limits: refused each with the present value";
    }

    private static long direction(Limit limit) {
        return limit.tighterIs() == Limit.Strictness.LOWER ? 1 : -1;
    }

    private static String tighten(Trial trial) throws Broken, StandException {
        Limits before = trial.limits();
        for (Limit limit : Limit.values()) {
            obeyed(trial, limit, before.of(limit), before);
        }
        long present = before.runTimeMs();
        if (present == Limit.RUN_TIME.lowest()) {
            return "every limit set to what it is; the run time is 0 and can't be tighter";
        }
        Limits tighter = before.with(Limit.RUN_TIME, present - 1);
        obeyed(trial, Limit.RUN_TIME, present - 1, tighter);
        obeyed(trial, Limit.RUN_TIME, present - 1, tighter);
        trial.refused(Command.of(new Tighten(Limit.RUN_TIME, present)), RefuseReason.WOULD_WIDEN, (int) (present - 1));
        return String.format(
                Locale.ROOT, "run time %d to %d ms until the next reset, and not back", present, present - 1);
    }

    /** Demands that a limit is taken and told. */
    static void obeyed(Trial trial, Limit limit, long value, Limits expected) throws Broken, StandException {
        Answer answer = trial.ask(new Tighten(limit, value));
        trial.demand(
                answer.message().equals(Optional.of(expected)),
                "limits with %s at %d expected; %s",
                limit.words(),
                value,
                answer.words());
    }
}
