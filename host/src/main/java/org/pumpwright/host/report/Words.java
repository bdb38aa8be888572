package org.pumpwright.host.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.grade.ComplaintAnswer;
import org.pumpwright.host.grade.Handling;
import org.pumpwright.host.grade.Intake;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecord.CurveUsed;
import org.pumpwright.host.text.Interpreter;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;

/** Sentences and figures that every paper of a run shares, in the language of one page. Thread-safe. */
final class Words {
    /** Runs by hand carry the label of this plan, whatever its version. */
    private static final String MANUAL_PLAN = "manual v";

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm xxx", Locale.ROOT);

    private final Interpreter in;

    Words(Interpreter in) {
        this.in = in;
    }

    String warranty() {
        return in.say("technician.warranty");
    }

    String hoses() {
        return in.say("technician.hoses");
    }

    String practice() {
        return in.say("technician.practice");
    }

    String byHand() {
        return in.say("technician.manual");
    }

    String nothingSaid() {
        return in.say("technician.nothing_said");
    }

    String verdict(Verdict verdict) {
        return in.say("technician.verdict." + VerdictMark.word(verdict));
    }

    /** What weakens the verdict, whatever it is. */
    List<String> reservations(RunRecord run) {
        List<String> found = new ArrayList<>();
        if (run.grade().advisory()) {
            found.add(in.say("technician.advice"));
        }
        if (!run.subject().practice() && run.curve().map(CurveUsed::simulated).orElse(false)) {
            found.add(in.say("technician.simulated_curve"));
        }
        return found;
    }

    /** Whether a person drove the unit by hand: such a run is never graded. */
    static boolean manual(RunRecord run) {
        return run.plan().startsWith(MANUAL_PLAN);
    }

    /** The text as it was typed, or words that say it is missing. */
    String given(String text) {
        return text.isBlank() ? in.say("technician.not_given") : text;
    }

    /** The rule by which the run was judged, or words that say it is missing. */
    String rule(RunRecord run) {
        return given(in.stored(run.grade().rule()));
    }

    String rules(RunRecord run) {
        return run.rules().orElse(in.say("technician.no_rules"));
    }

    /** The stored sentence with exactly one full stop at its end, whoever wrote it. */
    String sentence(String stored) {
        String bare = in.stored(stored).strip();
        return bare.endsWith(".") || bare.endsWith("?") || bare.endsWith("!") ? bare : bare + ".";
    }

    String next(RunRecord run) {
        if (!run.grade().nextTest().isBlank()) {
            return sentence(run.grade().nextTest());
        }
        return switch (run.grade().verdict()) {
            case PASS -> in.say("technician.next_after_pass");
            case FAIL, INCONCLUSIVE, INVALID, NOT_TESTED -> in.say("technician.not_given");
        };
    }

    /** Which run this was, and which came before it: a unit that was tried again and again must show. */
    String runs(RunRecord run) {
        Intake intake = run.intake();
        String before = intake.earlierRuns().isEmpty()
                ? ""
                : in.say("technician.runs_before", String.join(", ", intake.earlierRuns()));
        String decision =
                intake.decision().map(each -> ", " + in.stored(each.words())).orElse("");
        return in.say("technician.runs", intake.attempt())
                + before
                + decision
                + run.regradedFrom()
                        .map(id -> in.say("technician.regraded", id))
                        .orElse("");
    }

    /** What the customer said, or words that say it is missing. */
    String complaintGiven(RunRecord run) {
        return run.intake().complaint().map(in::stored).orElse(in.say("technician.not_given"));
    }

    /** Whether somebody has made sure that the unit is clean; empty where nobody was asked. */
    Optional<String> rinsed(RunRecord run) {
        Handling handling = run.intake().handling();
        return handling.cleanBy()
                .map(person -> in.say("technician.rinsed_by", person))
                .or(() -> handling.uncleaned()
                        .map(person -> in.say("technician.not_rinsed", person.by(), in.typed(person.reason()))));
    }

    /** Whether the complaint is explained; empty where none was given. */
    Optional<String> complaint(RunRecord run) {
        ComplaintAnswer explains = run.grade().explains();
        return run.intake()
                .complaint()
                .map(word -> in.say(
                        "technician.explains",
                        in.stored(word),
                        in.say("technician.answer." + explains.answer().name().toLowerCase(Locale.ROOT)),
                        sentence(explains.why())));
    }

    static String startedAt(RunRecord run) {
        return TIME.format(run.startedAt()).replace(" +", " UTC+").replace(" -", " UTC-");
    }

    /** From the first to the last sample, by the board's clock. */
    String length(RunRecord run) {
        List<Sample> samples = run.trace().samples();
        if (samples.isEmpty()) {
            return in.say("technician.no_sample");
        }
        long nanos =
                samples.get(samples.size() - 1).boardNanos() - samples.get(0).boardNanos();
        long seconds = Math.round(nanos / 1e9);
        return String.format(Locale.ROOT, "%d min %02d s", seconds / 60, seconds % 60);
    }

    private String curve(CurveUsed curve) {
        return in.say(
                "technician.curve",
                curve.label(),
                curve.units(),
                in.say(curve.simulated() ? "technician.curve.simulated" : "technician.curve.measured"),
                String.format(Locale.ROOT, "%.2f", curve.toleranceFactor()),
                in.stored(curve.coverage()));
    }

    String curve(RunRecord run) {
        return run.curve().map(this::curve).orElse(in.say("technician.no_curve"));
    }

    String conditions(RunRecord run) {
        return in.say(
                "technician.conditions.values",
                run.conditions().model(),
                run.conditions().driver(),
                String.format(Locale.ROOT, "%.0f", run.conditions().pwmHz()),
                run.conditions().nozzle(),
                run.conditions().fluid());
    }

    String board(RunRecord run) {
        RunRecord.StandUsed stand = run.stand();
        return in.say(
                "technician.board.values",
                stand.board(),
                given(stand.boardUniqueId()),
                stand.firmware(),
                String.format(Locale.ROOT, "%08x", stand.bootId()));
    }

    /** False where a paper may show no healthy range and no cause, because the run judges no unit. */
    static boolean speaksOfTheUnit(Verdict verdict) {
        return switch (verdict) {
            case PASS, FAIL, INCONCLUSIVE -> true;
            case INVALID, NOT_TESTED -> false;
        };
    }

    /** The leg of a point, and what was not as it should be there. */
    String leg(PointMark point) {
        return leg(point.leg()) + flaws(point);
    }

    String leg(Leg leg) {
        return in.say("points.leg." + leg.name().toLowerCase(Locale.ROOT));
    }

    /** What was not as it should be at a point, each after a comma. */
    String flaws(PointMark point) {
        return (point.settled() ? "" : ", " + in.say("points.not_settled"))
                + (point.enoughPulses() ? "" : ", " + in.say("points.few_pulses"));
    }
}
