package org.pumpwright.host.report;

import java.util.List;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Interpreter;

/** The blocks of words on the page of one run, in the page's language. Thread-safe. */
final class HtmlBlocks {
    /** More reasons than this stand in two columns. */
    private static final int MANY = 3;

    private final RunRecord run;
    private final Grade grade;
    private final Interpreter in;
    private final Words words;

    HtmlBlocks(RunRecord run, Interpreter in) {
        this.run = run;
        this.in = in;
        grade = run.grade();
        words = new Words(in);
    }

    Tag verdict() {
        String key = "technician.meaning." + VerdictMark.word(grade.verdict());
        Tag said = Tag.of("div")
                .add(Tag.withText("h1", words.verdict(grade.verdict())))
                .add(Tag.withText("p", in.say(key)).set("class", "meaning"));
        words.reservations(run)
                .forEach(reservation -> said.add(Tag.withText("p", reservation).set("class", "reservation")));
        return Tag.of("section", "verdict " + VerdictMark.styleClass(grade.verdict()))
                .add(VerdictMark.draw(grade.verdict()), said);
    }

    Tag unit() {
        Facts facts = new Facts("unit");
        facts.add(in.say("technician.unit"), run.subject().modelTitle());
        facts.add(in.say("technician.serial"), words.given(run.subject().serial()));
        facts.add(in.say("technician.tested"), Words.startedAt(run));
        facts.add(in.say("technician.technician"), words.given(run.subject().technician()));
        facts.add(in.say("technician.claim"), words.given(run.intake().claim().orElse("")));
        facts.add(in.say("technician.complaint"), words.complaintGiven(run));
        run.intake().handling().product().ifPresent(said -> facts.add(in.say("technician.product"), in.typed(said)));
        words.rinsed(run).ifPresent(said -> facts.add(in.say("technician.rinsed"), said));
        facts.add(in.say("technician.run_number"), words.runs(run));
        return facts.draw();
    }

    Tag reasons() {
        Tag list = Tag.of("ul", grade.reasons().size() > MANY ? "reasons many" : "reasons");
        grade.reasons().forEach(reason -> list.add(Tag.withText("li", in.stored(reason))));
        return list;
    }

    Tag next() {
        return Tag.of("p", "next")
                .add(Tag.withText("b", in.say("technician.next")))
                .text(" " + words.next(run));
    }

    /** Whether the complaint is explained; nothing where none was given. */
    List<Tag> complaint() {
        return words.complaint(run)
                .map(said -> List.of(Tag.of("p", "complaint").add(Tag.withText("b", said))))
                .orElse(List.of());
    }

    /** Nothing where the run does not speak of the unit. */
    Tag causes() {
        Tag block = Tag.of("section", "causes");
        if (grade.causes().isEmpty() || !Words.speaksOfTheUnit(grade.verdict())) {
            return block;
        }
        Tag list = Tag.of("ol");
        for (Cause cause : grade.causes()) {
            list.add(Tag.of("li")
                    .add(Tag.withText("b", in.stored(cause.name())))
                    .text(": " + words.sentence(cause.because()) + " ")
                    .add(Tag.withText("b", in.say("technician.to_tell") + " "))
                    .text(words.sentence(cause.nextTest())));
        }
        return block.add(Tag.withText("h2", in.say("technician.causes")), list);
    }

    Tag standChecks() {
        List<StandCheck> checks = grade.standChecks();
        long held = checks.stream().filter(StandCheck::ok).count();
        Tag list = Tag.of("ul");
        checks.stream().filter(check -> !check.ok()).forEach(check -> list.add(failed(check)));
        checks.stream()
                .filter(StandCheck::ok)
                .forEach(check -> list.add(Tag.of("li", "held")
                        .add(Tag.withText("b", "✓ " + in.stored(check.name())))
                        .text(" " + in.stored(check.finding()))));
        return Tag.of("section", "checks")
                .add(Tag.withText("h2", in.say("technician.checks", held, checks.size())), list);
    }

    private Tag failed(StandCheck check) {
        return Tag.of("li", "broken")
                .add(Tag.withText("b", "✗ " + in.say("technician.not_ok", in.stored(check.name()))))
                .text(" " + words.sentence(check.finding()) + " ")
                .add(Tag.withText("b", in.say("technician.do", words.sentence(check.remedy()))));
    }

    Tag identity() {
        Facts facts = new Facts("identity");
        facts.add(in.say("technician.curve.name"), words.curve(run));
        if (Words.speaksOfTheUnit(grade.verdict())) {
            facts.add(in.say("technician.rule"), words.rule(run));
        }
        facts.add(in.say("technician.rules"), words.rules(run));
        facts.add(in.say("technician.conditions"), words.conditions(run));
        facts.add(
                in.say("technician.plan"),
                run.plan() + ", " + words.length(run) + "; "
                        + in.stored(run.ending().reason()));
        facts.add(
                in.say("technician.stand"),
                in.say(
                        "technician.stand.values",
                        run.stand().title(),
                        run.stand().id(),
                        run.stand().samplesLost()));
        facts.add(in.say("technician.board"), words.board(run));
        facts.add(in.say("technician.program"), run.software());
        facts.add(in.say("technician.record"), run.id());
        return facts.draw();
    }

    /** An invalid run leaves nothing to decide about the unit. */
    Tag foot() {
        Verdict verdict = grade.verdict();
        Tag foot = Tag.of("footer");
        if (verdict == Verdict.INVALID) {
            return foot.add(Tag.withText("p", words.hoses()))
                    .add(
                            blank("technician.sign.put_right"),
                            blank("technician.sign.what_was_done"),
                            blank("technician.sign.date"));
        }
        foot.add(Tag.withText("p", words.hoses() + " " + words.warranty()));
        if (verdict == Verdict.NOT_TESTED) {
            return foot;
        }
        if (run.intake().complaint().isEmpty()) {
            foot.add(blank("technician.sign.explains"));
        }
        return foot.add(blank("technician.sign.decision"), blank("technician.sign.name_date"));
    }

    private Tag blank(String key) {
        return Tag.withText("p", in.say(key)).set("class", "line");
    }

    /** Tells that sentences of the record stand in English; nothing where all of them have the page's language. */
    List<Tag> leftInEnglish() {
        int left = in.leftInEnglish().size();
        return left == 0
                ? List.of()
                : List.of(Tag.withText("p", in.say("technician.left_in_english", left))
                        .set("class", "small"));
    }
}
