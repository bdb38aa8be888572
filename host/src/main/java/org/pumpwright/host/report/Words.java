package org.pumpwright.host.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.grade.ComplaintAnswer;
import org.pumpwright.host.grade.Intake;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecord.CurveUsed;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;

/** Sentences and figures that every paper shares. Thread-safe. */
final class Words {
    static final String WARRANTY = "The stand measures; a person decides on warranty.";
    static final String HOSES =
            "Before you loosen a hose: drive off, gauge at zero. Never feel for a leak with your hand.";
    static final String PRACTICE = "PRACTICE - simulated or invented unit, not a test of a real part";
    static final String MANUAL = "MANUAL - NOT GRADED";

    /** Runs by hand carry the label of this plan, whatever its version. */
    private static final String MANUAL_PLAN = "manual v";

    private static final String ADVICE = "advice only: too few known-good units stand behind the curve";
    static final String NOTHING_SAID =
            "Nothing on this paper speaks for or against the unit. Do not tag, return, repair or claim on it.";

    private static final String SIMULATED_CURVE = "the curve is of simulated units: for practice only";

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm xxx", Locale.ROOT);

    private Words() {}

    static String verdict(Verdict verdict) {
        return verdict.name().replace('_', ' ');
    }

    /** What weakens the verdict, whatever it is. */
    static List<String> reservations(RunRecord run) {
        List<String> found = new ArrayList<>();
        if (run.grade().advisory()) {
            found.add(ADVICE);
        }
        if (!run.subject().practice() && run.curve().map(CurveUsed::simulated).orElse(false)) {
            found.add(SIMULATED_CURVE);
        }
        return found;
    }

    /** Whether a person drove the unit by hand: such a run is never graded. */
    static boolean manual(RunRecord run) {
        return run.plan().startsWith(MANUAL_PLAN);
    }

    /** The text, or words that say it is missing. */
    static String given(String text) {
        return text.isBlank() ? "not given" : text;
    }

    /** The text with exactly one full stop at its end, whoever wrote it. */
    static String sentence(String text) {
        String bare = text.strip();
        return bare.endsWith(".") || bare.endsWith("?") || bare.endsWith("!") ? bare : bare + ".";
    }

    static String next(RunRecord run) {
        if (!run.grade().nextTest().isBlank()) {
            return sentence(run.grade().nextTest());
        }
        return switch (run.grade().verdict()) {
            case PASS ->
                "nothing more on the stand. If the complaint remains, look at the planter: volts at the plug"
                        + " under load, strainer, air in the suction, the calibration number typed in.";
            case FAIL, INCONCLUSIVE, INVALID, NOT_TESTED -> "not given";
        };
    }

    /** Which run this was, and which came before it: a unit that was tried again and again must show. */
    static String runs(RunRecord run) {
        Intake intake = run.intake();
        String number = "run " + intake.attempt() + " for this matter";
        String before = intake.earlierRuns().isEmpty() ? "" : ", after " + String.join(", ", intake.earlierRuns());
        String decision = intake.decision().map(each -> ", " + each.words()).orElse("");
        return number
                + before
                + decision
                + run.regradedFrom().map(id -> ", graded again from " + id).orElse("");
    }

    /** Whether the complaint is explained; empty where none was given. */
    static Optional<String> complaint(RunRecord run) {
        return run.intake()
                .complaint()
                .map(word -> "Explains the complaint \"" + word + "\": "
                        + answer(run.grade().explains()) + ", "
                        + sentence(run.grade().explains().why()));
    }

    private static String answer(ComplaintAnswer explains) {
        return switch (explains.answer()) {
            case YES -> "YES";
            case PARTLY -> "PARTLY";
            case NO -> "NO";
            case NOT_ATTEMPTED -> "NOT ATTEMPTED";
        };
    }

    static String startedAt(RunRecord run) {
        return TIME.format(run.startedAt()).replace(" +", " UTC+").replace(" -", " UTC-");
    }

    /** From the first to the last sample, by the board's clock. */
    static String length(RunRecord run) {
        List<Sample> samples = run.trace().samples();
        if (samples.isEmpty()) {
            return "no sample came";
        }
        long nanos =
                samples.get(samples.size() - 1).boardNanos() - samples.get(0).boardNanos();
        long seconds = Math.round(nanos / 1e9);
        return String.format(Locale.ROOT, "%d min %02d s", seconds / 60, seconds % 60);
    }

    static String curve(CurveUsed curve) {
        return String.format(
                Locale.ROOT,
                "%s, n = %d known-good units (%s), k = %.2f: %s",
                curve.label(),
                curve.units(),
                curve.simulated() ? "simulated" : "measured",
                curve.toleranceFactor(),
                curve.coverage());
    }

    static String curve(RunRecord run) {
        return run.curve().map(Words::curve).orElse("none for this unit and stand");
    }

    static String conditions(RunRecord run) {
        return String.format(
                Locale.ROOT,
                "model %s, driver %s at %.0f Hz, nozzle %s, fluid %s",
                run.conditions().model(),
                run.conditions().driver(),
                run.conditions().pwmHz(),
                run.conditions().nozzle(),
                run.conditions().fluid());
    }

    static String board(RunRecord run) {
        RunRecord.StandUsed stand = run.stand();
        return String.format(
                Locale.ROOT,
                "%s %s, firmware %s, boot %08x",
                stand.board(),
                given(stand.boardUniqueId()),
                stand.firmware(),
                stand.bootId());
    }

    /** False where a paper may show no healthy range and no cause, because the run judges no unit. */
    static boolean speaksOfTheUnit(Verdict verdict) {
        return switch (verdict) {
            case PASS, FAIL, INCONCLUSIVE -> true;
            case INVALID, NOT_TESTED -> false;
        };
    }

    /** The leg of a point, and what was not as it should be there. */
    static String leg(PointMark point) {
        return leg(point.leg()) + flaws(point);
    }

    static String leg(Leg leg) {
        return switch (leg) {
            case UP -> "up";
            case DOWN -> "down";
            case REPEAT -> "repeat";
        };
    }

    /** What was not as it should be at a point, each after a comma. */
    static String flaws(PointMark point) {
        return (point.settled() ? "" : ", not settled") + (point.enoughPulses() ? "" : ", few pulses");
    }
}
