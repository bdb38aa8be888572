package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pumpwright.host.app.claim.ClaimList;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.claim.CoverageAssessment;
import org.pumpwright.host.claim.CoverageDecision;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.Finding;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.Sentence;
import org.pumpwright.host.claim.Sourced;
import org.pumpwright.host.claim.UnitAsReceived;

/** A claim as lines of lists, in neutral words. Thread-safe. */
final class ClaimRows {
    private ClaimRows() {}

    /** A claim in the list of claims. */
    static Row line(ClaimList.Line line) {
        ClaimFile file = line.file();
        UnitAsReceived unit = file.intake().unit();
        return new Row(
                Word.asIs("%s   %s %s"
                        .formatted(file.number(), unit.model(), unit.serial())
                        .strip()),
                mark(file),
                Word.of("ui.claim.line", Word.of(file.whereabouts().to().key()), line.daysHere(), line.days()),
                file.decision()
                        .map(decision -> Word.of(decision.outcome().key()))
                        .orElse(nextWord(file)));
    }

    private static Word nextWord(ClaimFile file) {
        if (file.missing().stream().anyMatch(Missing::beforeTheTest)) {
            return Word.of("ui.claim.line.intake");
        }
        if (file.finding().isPresent()) {
            return Word.of("ui.claim.line.decide");
        }
        return Word.of(file.runs().isEmpty() ? "ui.claim.line.test" : "ui.claim.line.find");
    }

    private static Mark mark(ClaimFile file) {
        if (file.decision().isPresent()) {
            return Mark.GOOD;
        }
        return file.missing().stream().anyMatch(Missing::beforeTheTest) ? Mark.WATCH : Mark.UNKNOWN;
    }

    /** What stands: decision, finding, runs, what to look at, what is missing, what the coverage rules say. */
    static List<Row> of(ClaimView view) {
        ClaimFile file = view.file();
        List<Row> rows = new ArrayList<>();
        file.decision().ifPresent(decision -> rows.add(decision(decision)));
        file.finding().ifPresent(finding -> rows.add(finding(finding)));
        view.runs().forEach(run -> rows.add(run(run)));
        file.flags()
                .forEach(flag ->
                        rows.add(new Row(Word.of("ui.claim.flag"), Mark.WATCH, said(flag.sentence()), Word.NONE)));
        file.missing().stream().filter(Missing::beforeTheTest).forEach(item -> rows.add(missing(item)));
        view.reviewed().coverage().ifPresent(coverage -> coverage.lines().forEach(line -> rows.add(covered(line))));
        file.missing().stream().filter(item -> !item.beforeTheTest()).forEach(item -> rows.add(missing(item)));
        view.cautions()
                .forEach(caution ->
                        rows.add(new Row(Word.of("ui.claim.caution"), Mark.WATCH, Word.stored(caution), Word.NONE)));
        return rows;
    }

    /** The same for whoever decides: finding, flags, coverage. */
    static List<Row> forDecision(ClaimView view) {
        ClaimFile file = view.file();
        List<Row> rows = new ArrayList<>();
        file.finding().ifPresent(finding -> rows.add(finding(finding)));
        file.flags()
                .forEach(flag ->
                        rows.add(new Row(Word.of("ui.claim.flag"), Mark.WATCH, said(flag.sentence()), Word.NONE)));
        view.reviewed().coverage().ifPresent(coverage -> coverage.lines().forEach(line -> rows.add(covered(line))));
        return rows;
    }

    private static Row missing(Missing item) {
        return new Row(
                Word.of(item.key()),
                item.beforeTheTest() ? Mark.BAD : Mark.UNKNOWN,
                Word.of(item.beforeTheTest() ? "ui.claim.missing.before" : "ui.claim.missing.yet"),
                Word.NONE);
    }

    private static Row covered(CoverageAssessment.Line line) {
        return new Row(
                Word.of(
                        "ui.claim.rule",
                        Word.of("claim.rule." + line.rule()),
                        Word.of(line.holds().key())),
                switch (line.holds()) {
                    case YES -> Mark.GOOD;
                    case NO -> Mark.BAD;
                    case UNKNOWN -> Mark.UNKNOWN;
                },
                Word.of("ui.claim.because", said(line.because())),
                Word.NONE);
    }

    private static Row run(ClaimRun run) {
        return new Row(
                Word.of("ui.claim.run", VerdictWords.word(run.verdict())),
                VerdictWords.mark(run.verdict()),
                Word.of("ui.claim.run.line", run.startedAt().toLocalDate(), run.plan(), run.technician()),
                Word.NONE);
    }

    private static Row finding(Finding finding) {
        return new Row(
                Word.of("ui.claim.finding", finding.category()),
                Mark.GOOD,
                Word.of(finding.category().key()),
                Word.of("ui.claim.signed", finding.signer(), finding.at().toLocalDate()));
    }

    private static Row decision(CoverageDecision decision) {
        return new Row(
                Word.of("ui.claim.decision", Word.of(decision.outcome().key())),
                Mark.GOOD,
                Word.asIs(decision.reason()),
                Word.of(
                        "ui.claim.signed",
                        decision.signer()
                                + decision.second().map(second -> ", " + second).orElse(""),
                        decision.at().toLocalDate()));
    }

    static Word said(Sentence sentence) {
        return Word.of(sentence.key(), sentence.values().toArray());
    }

    /** What was written down when the unit came in, and where it was since. */
    static List<Fact> facts(ClaimView view) {
        ClaimIntake intake = view.file().intake();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(Word.of("ui.claim.fact.unit"), unit(intake.unit())));
        fact(facts, "serial", intake.unit().serial());
        fact(facts, "complaint", intake.complaint().words());
        fact(facts, "product", intake.planter().product());
        facts.add(new Fact(Word.of("ui.claim.fact.clean"), clean(intake)));
        fact(facts, "customer", intake.people().customer());
        fact(facts, "brought_by", intake.people().broughtBy());
        fact(facts, "contact", intake.people().contact());
        fact(facts, "accessories", intake.unit().accessories());
        fact(facts, "seal", intake.unit().seal());
        fact(facts, "tag", intake.unit().tag());
        sourced(facts, "sold", intake.use().sold(), day -> Word.asIs(day.toString()));
        sourced(facts, "first_used", intake.use().firstUsed(), day -> Word.asIs(day.toString()));
        sourced(facts, "hours", intake.use().hours(), count -> Word.asIs("%.0f".formatted(count)));
        sourced(facts, "acres", intake.use().acres(), count -> Word.asIs("%.0f".formatted(count)));
        fact(facts, "value", intake.value().map(value -> value.text()).orElse(""));
        fact(facts, "taken_by", intake.takenBy());
        view.file().moves().forEach(move -> facts.add(custody(move)));
        return facts;
    }

    private static Word unit(UnitAsReceived unit) {
        if (unit.kind().isEmpty()) {
            return unit.model().isEmpty() ? Word.NONE : Word.asIs(unit.model());
        }
        Word kind = Word.of("ui.claim.kind." + unit.kind());
        return unit.model().isEmpty() ? kind : Word.of("ui.claim.unit_line", kind, unit.model());
    }

    private static Word clean(ClaimIntake intake) {
        return intake.decontamination()
                .confirmedBy()
                .map(name -> Word.of(
                        "ui.claim.clean.confirmed", intake.decontamination().rinses(), name))
                .orElse(Word.of("ui.claim.clean.not_confirmed"));
    }

    private static Fact custody(CustodyMove move) {
        return new Fact(
                Word.of(move.to().key()),
                Word.asIs("%s, %s, %s".formatted(move.at().toLocalDate(), move.person(), move.place())));
    }

    private static void fact(List<Fact> facts, String key, String value) {
        facts.add(new Fact(Word.of("ui.claim.fact." + key), value.isEmpty() ? Word.NONE : Word.asIs(value)));
    }

    private static <T> void sourced(
            List<Fact> facts, String key, Optional<Sourced<T>> value, Function<T, Word> printed) {
        Word said = value.map(known -> Word.of(
                        "ui.claim.sourced",
                        printed.apply(known.value()),
                        Word.of("claim.source." + known.source().word())))
                .orElse(Word.NONE);
        facts.add(new Fact(Word.of("ui.claim.fact." + key), said));
    }
}
