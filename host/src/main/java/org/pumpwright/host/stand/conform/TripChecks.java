package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.AnalogRole;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.Limit;
import org.pumpwright.protocol.Limits;
import org.pumpwright.protocol.SafeReason;
import org.pumpwright.protocol.Sample;
import org.pumpwright.protocol.Tighten;

/** Whether the board watches its limits. Thread-safe. */
final class TripChecks {
    /** Two steps of a ten-bit converter. */
    private static final int ABOVE = 128;

    private static final int TEN_BITS = ~63;
    private static final int HIGHEST_CODE = 0xFFC0;
    private static final int SHORT_MILLIS = 300;
    private static final int RUN_MILLIS = 600;
    private static final int DRY_DUTY = 22_000;
    private static final int PERIOD_MILLIS = 10;

    private TripChecks() {}

    static List<Check> all() {
        return List.of(
                reading(
                        "supply amps above their limit make safe within their time",
                        new Watched(
                                Provocation.Cause.AMPS_CODE,
                                AnalogRole.SUPPLY_AMPS,
                                Limit.SUPPLY_AMPS,
                                Limit.SUPPLY_AMPS_TIME,
                                SafeReason.OVER_CURRENT)),
                reading(
                        "a pressure above its limit makes safe within its time",
                        new Watched(
                                Provocation.Cause.PRESSURE_CODE,
                                AnalogRole.PRESSURE,
                                Limit.PRESSURE,
                                Limit.PRESSURE_TIME,
                                SafeReason.OVER_PRESSURE)),
                reading(
                        "volts above their limit make safe within their time",
                        new Watched(
                                Provocation.Cause.VOLTS_CODE,
                                AnalogRole.VOLTS,
                                Limit.VOLTS,
                                Limit.VOLTS_TIME,
                                SafeReason.OVER_VOLTAGE)),
                new Check("a pump against a closed line is made safe within its time", "3", TripChecks::deadHead),
                new Check("a pump that runs dry is made safe within its time", "3", TripChecks::dryRun),
                new Check("the run time ends a stretch, pauses not counted", "3", TripChecks::runTime));
    }

    /** A reading and its two limits. */
    private record Watched(Provocation.Cause cause, AnalogRole role, Limit limit, Limit time, SafeReason reason) {}

    private static Check reading(String name, Watched watched) {
        return new Check(name, "3", trial -> above(trial, watched));
    }

    private static String above(Trial trial, Watched watched) throws Broken, NotPossible, StandException {
        int channel = channel(trial, watched.role);
        trial.needs(watched.cause);
        Limits limits = trial.limits();
        int limit = (int) limits.of(watched.limit);
        if (limit + ABOVE > HIGHEST_CODE) {
            throw new NotPossible("the limit is the converter's own end: nothing can be above it");
        }
        trial.arm();
        trial.stream(PERIOD_MILLIS);
        int mark = trial.talk().mark();
        trial.provoke(watched.cause, limit & TEN_BITS);
        trial.talk().listen(Duration.ofMillis(limits.of(watched.time) + 150).plus(trial.patience()));
        trial.demand(
                trial.all(Event.class, mark).isEmpty(),
                "no event expected with a reading at the limit of %d; %s",
                limit,
                trial.events(mark));
        mark = trial.talk().mark();
        trial.provoke(watched.cause, limit + ABOVE);
        Duration time = Duration.ofMillis(limits.of(watched.time));
        Event event = trial.madeSafe(mark, watched.reason, time.plus(trial.patience()));
        trial.demand(event.detail() > limit, "the reading above %d expected as detail; %s", limit, Say.of(event));
        double took = since(
                trial, mark, event, sample -> sample.analogs().get(channel).max() > limit);
        within(trial, took, time.toMillis());
        return String.format(
                Locale.ROOT,
                "at the limit of %d nothing; above it %s, %.0f ms after the first sample above; limit %d ms",
                limit,
                Say.of(event),
                took,
                time.toMillis());
    }

    private static String deadHead(Trial trial) throws Broken, NotPossible, StandException {
        int channel = channel(trial, AnalogRole.PRESSURE);
        trial.needs(Provocation.Cause.PRESSURE_CODE);
        trial.needs(Provocation.Cause.RESTART);
        Limits limits = trial.limits();
        int code = (int) limits.deadHeadPressure() + ABOVE;
        if (code > limits.pressure()) {
            throw new NotPossible("the dead-head pressure is not below the pressure limit");
        }
        tighten(trial, Limit.DEAD_HEAD_TIME, SHORT_MILLIS);
        trial.arm();
        trial.stream(PERIOD_MILLIS);
        trial.provoke(Provocation.Cause.PRESSURE_CODE, code);
        int still = trial.talk().mark();
        trial.talk().listen(Duration.ofMillis(2 * SHORT_MILLIS).plus(trial.patience()));
        trial.demand(
                trial.all(Event.class, still).isEmpty(), "no event expected with drives at 0; %s", trial.events(still));
        int mark = trial.talk().mark();
        trial.drive(Trial.LOW_DUTY, 0);
        Event event = trial.madeSafe(mark, SafeReason.DEAD_HEAD, Duration.ofMillis(SHORT_MILLIS));
        double took = since(
                trial,
                mark,
                event,
                sample -> sample.applied().get(0) > 0
                        && sample.analogs().get(channel).max() > limits.deadHeadPressure());
        within(trial, took, SHORT_MILLIS);
        trial.restart();
        return String.format(
                Locale.ROOT,
                "time tightened to %d ms: nothing at rest; driven %s after %.0f ms",
                SHORT_MILLIS,
                Say.of(event),
                took);
    }

    private static String dryRun(Trial trial) throws Broken, NotPossible, StandException {
        channel(trial, AnalogRole.SUPPLY_AMPS);
        trial.needs(Provocation.Cause.AMPS_CODE);
        trial.needs(Provocation.Cause.RESTART);
        if (!trial.toy()) {
            throw new NotPossible("it needs a drive at three tenths; this script gives a real one a tenth at most");
        }
        long dry = Math.max(trial.limits().dryAmps(), 4096);
        tighten(trial, Limit.DRY_AMPS, dry);
        tighten(trial, Limit.DRY_TIME, SHORT_MILLIS);
        trial.arm();
        trial.stream(PERIOD_MILLIS);
        trial.provoke(Provocation.Cause.AMPS_CODE, (int) dry / 2 & TEN_BITS);
        trial.drive(Trial.LOW_DUTY, 0);
        int slow = trial.talk().mark();
        trial.talk().listen(Duration.ofMillis(2 * SHORT_MILLIS).plus(trial.patience()));
        trial.demand(trial.all(Event.class, slow).isEmpty(), "no event expected at a tenth; %s", trial.events(slow));
        int mark = trial.talk().mark();
        trial.drive(DRY_DUTY, 0);
        Event event = trial.madeSafe(mark, SafeReason.DRY_RUN, Duration.ofMillis(SHORT_MILLIS + 300));
        double took = since(trial, mark, event, sample -> sample.applied().get(0) >= 19_661);
        within(trial, took, SHORT_MILLIS);
        trial.restart();
        return String.format(
                Locale.ROOT, "nothing at a tenth; above three tenths %s after %.0f ms", Say.of(event), took);
    }

    private static String runTime(Trial trial) throws Broken, NotPossible, StandException {
        trial.needs(Provocation.Cause.RESTART);
        tighten(trial, Limit.RUN_TIME, RUN_MILLIS);
        trial.arm();
        trial.stream(PERIOD_MILLIS);
        trial.sample();
        int mark = trial.talk().mark();
        trial.drive(Trial.LOW_DUTY, 0);
        trial.talk().listen(Duration.ofMillis(RUN_MILLIS / 2));
        trial.drive(0, 0);
        trial.talk().listen(Duration.ofMillis(RUN_MILLIS));
        trial.demand(trial.all(Event.class, mark).isEmpty(), "no event expected in a pause; %s", trial.events(mark));
        trial.drive(Trial.LOW_DUTY, 0);
        Event event = trial.madeSafe(mark, SafeReason.RUN_TIME, Duration.ofMillis(RUN_MILLIS));
        double driven = driven(trial, mark, event);
        trial.demand(
                Math.abs(driven - RUN_MILLIS) <= 50,
                "made safe after %.0f ms above 0; the run time is %d ms",
                driven,
                RUN_MILLIS);
        trial.restart();
        return String.format(
                Locale.ROOT, "run time tightened to %d ms: made safe after %.0f ms above 0", RUN_MILLIS, driven);
    }

    private static double driven(Trial trial, int mark, Event event) {
        double millis = 0;
        List<Sample> samples = trial.all(Sample.class, mark);
        for (int i = 1; i < samples.size(); i++) {
            if (samples.get(i - 1).applied().get(0) > 0
                    && trial.signedMillis(samples.get(i - 1).time(), event.time()) > 0) {
                millis += trial.millis(samples.get(i - 1).time(), samples.get(i).time());
            }
        }
        return millis;
    }

    private static void tighten(Trial trial, Limit limit, long value) throws Broken, NotPossible, StandException {
        Limits before = trial.limits();
        if (limit.wouldWiden(value, before.of(limit))) {
            throw new NotPossible("the board's own limit is tighter than the script's: " + limit.words());
        }
        Answer answer = trial.ask(new Tighten(limit, value));
        trial.demand(
                answer.message().orElse(null) instanceof Limits after && after.of(limit) == value,
                "limits with %s at %d expected; %s",
                limit.words(),
                value,
                answer.words());
    }

    private static int channel(Trial trial, AnalogRole role) throws NotPossible {
        return trial.board()
                .channelOf(role)
                .orElseThrow(() -> new NotPossible("the board has no channel for " + Say.of(role)));
    }

    private static double since(Trial trial, int mark, Event event, Predicate<Sample> fulfilled) throws Broken {
        Sample first = trial.all(Sample.class, mark).stream()
                .filter(fulfilled)
                .findFirst()
                .orElseThrow(() -> new Broken("no sample shows what the event tells"));
        return trial.signedMillis(first.time(), event.time());
    }

    /** A sample comes up to a period late, and input filters and whole milliseconds add a little. */
    private static void within(Trial trial, double took, long limit) throws Broken {
        trial.demand(
                took >= limit - PERIOD_MILLIS - 5 && took <= limit + Trial.SAFE_WITHIN_MILLIS + 5,
                "made safe %.0f ms after the first sample that shows the reason; the limit is %d ms",
                took,
                limit);
    }
}
