package org.pumpwright.host.report;

import java.util.List;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;

/** The blocks of words on the page. Thread-safe. */
final class HtmlBlocks {
    /** More reasons than this stand in two columns. */
    private static final int MANY = 3;

    private HtmlBlocks() {}

    static Tag verdict(RunRecord run) {
        Grade grade = run.grade();
        Tag words = Tag.of("div")
                .add(Tag.withText("h1", Words.verdict(grade.verdict())))
                .add(Tag.withText("p", grade.verdict().words()).set("class", "meaning"));
        Words.reservations(run)
                .forEach(reservation -> words.add(Tag.withText("p", reservation).set("class", "reservation")));
        return Tag.of("section", "verdict " + VerdictMark.styleClass(grade.verdict()))
                .add(VerdictMark.draw(grade.verdict()), words);
    }

    static Tag unit(RunRecord run) {
        Facts facts = new Facts("unit");
        facts.add("Unit", run.subject().modelTitle());
        facts.add("Serial", Words.given(run.subject().serial()));
        facts.add("Tested", Words.startedAt(run));
        facts.add("Technician", Words.given(run.subject().technician()));
        facts.add("Claim number", "not given");
        facts.add("Complaint", run.intake().complaint().orElse("not given"));
        facts.add("Runs", Words.runs(run));
        return facts.draw();
    }

    static Tag reasons(Grade grade) {
        Tag list = Tag.of("ul", grade.reasons().size() > MANY ? "reasons many" : "reasons");
        grade.reasons().forEach(reason -> list.add(Tag.withText("li", reason)));
        return list;
    }

    static Tag next(RunRecord run) {
        return Tag.of("p", "next").add(Tag.withText("b", "NEXT")).text(" " + Words.next(run));
    }

    /** Whether the complaint is explained; nothing where none was given. */
    static List<Tag> complaint(RunRecord run) {
        return Words.complaint(run)
                .map(words -> List.of(Tag.of("p", "complaint").add(Tag.withText("b", words))))
                .orElse(List.of());
    }

    /** Nothing where the run does not speak of the unit. */
    static Tag causes(Grade grade) {
        Tag block = Tag.of("section", "causes");
        if (grade.causes().isEmpty() || !Words.speaksOfTheUnit(grade.verdict())) {
            return block;
        }
        Tag list = Tag.of("ol");
        for (Cause cause : grade.causes()) {
            list.add(Tag.of("li")
                    .add(Tag.withText("b", cause.name()))
                    .text(": " + Words.sentence(cause.because()) + " ")
                    .add(Tag.withText("b", "To tell: "))
                    .text(Words.sentence(cause.nextTest())));
        }
        return block.add(Tag.withText("h2", "Likely causes, the likeliest first"), list);
    }

    static Tag standChecks(Grade grade) {
        List<StandCheck> checks = grade.standChecks();
        long held = checks.stream().filter(StandCheck::ok).count();
        Tag list = Tag.of("ul");
        checks.stream().filter(check -> !check.ok()).forEach(check -> list.add(failed(check)));
        checks.stream()
                .filter(StandCheck::ok)
                .forEach(check -> list.add(Tag.of("li", "held")
                        .add(Tag.withText("b", "✓ " + check.name()))
                        .text(" " + check.finding())));
        return Tag.of("section", "checks")
                .add(Tag.withText("h2", "Stand and run: " + held + " of " + checks.size() + " checks hold"), list);
    }

    private static Tag failed(StandCheck check) {
        return Tag.of("li", "broken")
                .add(Tag.withText("b", "✗ NOT OK: " + check.name()))
                .text(" " + Words.sentence(check.finding()) + " ")
                .add(Tag.withText("b", "Do: " + Words.sentence(check.remedy())));
    }

    static Tag identity(RunRecord run) {
        Facts facts = new Facts("identity");
        facts.add("Curve", Words.curve(run));
        if (Words.speaksOfTheUnit(run.grade().verdict())) {
            facts.add("Rule", Words.given(run.grade().rule()));
        }
        facts.add("Rules", run.rules().orElse("none of the shop for this kind of unit"));
        facts.add("Conditions", Words.conditions(run));
        facts.add(
                "Plan",
                run.plan() + ", " + Words.length(run) + "; " + run.ending().reason());
        facts.add(
                "Stand",
                run.stand().title() + " (" + run.stand().id() + "), samples lost: "
                        + run.stand().samplesLost());
        facts.add("Board", Words.board(run));
        facts.add("Program", run.software());
        facts.add("Record", run.id());
        return facts.draw();
    }

    /** An invalid run leaves nothing to decide about the unit. */
    static Tag foot(RunRecord run) {
        Verdict verdict = run.grade().verdict();
        Tag foot = Tag.of("footer");
        if (verdict == Verdict.INVALID) {
            return foot.add(Tag.withText("p", Words.HOSES))
                    .add(blank("Stand put right by:"), blank("What was done:"), blank("Date:"));
        }
        foot.add(Tag.withText("p", Words.HOSES + " " + Words.WARRANTY));
        if (verdict == Verdict.NOT_TESTED) {
            return foot;
        }
        if (run.intake().complaint().isEmpty()) {
            foot.add(blank("Explains the complaint (yes / partly / no):"));
        }
        return foot.add(blank("Decision on warranty:"), blank("Name, date:"));
    }

    private static Tag blank(String words) {
        return Tag.withText("p", words).set("class", "line");
    }
}
