package org.pumpwright.host.report.claim;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.claim.CoverageAssessment;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.Sentence;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.Blocks;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.report.sheet.VerdictBlock;
import org.pumpwright.host.text.Interpreter;
import org.pumpwright.host.text.Texts;

/** The lists of a claim: tests, coverage rules, what was seen, custody, evidence. Thread-safe. */
final class ClerkLists {
    private final ClerkEvidence evidence;
    private final ClaimFile file;
    private final Texts texts;
    private final Interpreter interpreter;

    ClerkLists(ClerkEvidence evidence, Texts texts) {
        this.evidence = evidence;
        this.file = evidence.file();
        this.texts = texts;
        this.interpreter = new Interpreter(texts);
    }

    private String said(Sentence sentence) {
        return texts.say(sentence.key(), sentence.values().toArray());
    }

    Tag tests() {
        Tag block = Tag.of("div")
                .add(Blocks.heading(texts.say("clerk.tests", file.runs().size())));
        if (file.runs().isEmpty()) {
            return block.add(Blocks.words("missing", texts.say("clerk.missing", texts.say("claim.missing.run"))));
        }
        Tag body = Tag.of("tbody");
        for (ClaimRun run : file.runs()) {
            String again = run.regradedFrom().isPresent() ? " " + texts.say("clerk.regraded") : "";
            body.add(Tag.of("tr")
                    .add(
                            Blocks.cell("words number", run.run() + again),
                            Blocks.cell("words strong figure-cell", VerdictBlock.word(run.verdict(), texts)),
                            Blocks.cell("words", run.plan()),
                            Blocks.cell("words", run.technician())));
        }
        return block.add(Blocks.table(
                4,
                List.of(
                        texts.say("clerk.column.test"),
                        texts.say("clerk.column.verdict"),
                        texts.say("clerk.column.plan"),
                        texts.say("clerk.column.technician")),
                body));
    }

    /** Whether the stand was fit to judge. */
    Tag stand() {
        List<String> lines = new ArrayList<>();
        lines.add(evidence.masterCheck()
                .map(check -> texts.say("clerk.master_check", check))
                .orElseGet(() -> texts.say("clerk.no_master_check")));
        evidence.run().ifPresent(run -> lines.add(checks(run)));
        return Tag.of("div").add(Blocks.heading(texts.say("clerk.stand")), Blocks.points("plain", lines));
    }

    private String checks(RunRecord run) {
        List<StandCheck> checks = run.grade().standChecks();
        List<String> broken = checks.stream()
                .filter(check -> !check.ok())
                .map(check -> interpreter.stored(check.name()))
                .toList();
        String held = texts.say(
                "clerk.checks",
                checks.size() - broken.size(),
                checks.size(),
                run.stand().title());
        return broken.isEmpty() ? held : held + " " + texts.say("clerk.broken", String.join(", ", broken));
    }

    List<Tag> coverage() {
        if (evidence.coverage().isEmpty()) {
            return List.of(
                    Blocks.heading(texts.say("clerk.coverage", "")),
                    Blocks.words("missing", texts.say("clerk.missing", texts.say("clerk.missing.coverage_rules"))));
        }
        CoverageAssessment assessed = evidence.coverage().get();
        Tag body = Tag.of("tbody");
        for (CoverageAssessment.Line line : assessed.lines()) {
            body.add(Tag.of("tr")
                    .add(
                            Blocks.cell("words strong figure-cell", texts.say("claim.rule." + line.rule())),
                            Blocks.cell("words strong figure-cell " + style(line.holds()), holds(line.holds())),
                            Blocks.cell("words", said(line.because())),
                            Blocks.cell("words small figure-cell", line.where())));
        }
        return List.of(
                Blocks.heading(texts.say("clerk.coverage", assessed.rules())),
                Blocks.table(
                        4,
                        List.of(
                                texts.say("clerk.column.rule"),
                                texts.say("clerk.column.holds"),
                                texts.say("clerk.column.because"),
                                texts.say("clerk.column.where")),
                        body));
    }

    private String holds(CoverageAssessment.Holds holds) {
        return texts.say("clerk." + holds.key());
    }

    private static String style(CoverageAssessment.Holds holds) {
        return switch (holds) {
            case YES -> "";
            case NO -> "reverse";
            case UNKNOWN -> "boxed";
        };
    }

    /** What a person should look at, what was seen, which steps were gone past, what was corrected. */
    Tag seen() {
        List<String> lines = new ArrayList<>();
        file.flags().forEach(flag -> lines.add(said(flag.sentence())));
        file.observations()
                .forEach(seen -> lines.add(texts.say(
                        "clerk.seen_line",
                        seen.words().isBlank()
                                ? texts.say(seen.seen().key())
                                : texts.say(seen.seen().key()) + ": " + seen.words(),
                        seen.person(),
                        FeatureWords.minute(seen.at()))));
        file.waivers()
                .forEach(waiver -> lines.add(texts.say(
                        "clerk.waiver_line",
                        texts.say(waiver.step().key()),
                        waiver.reason(),
                        waiver.person(),
                        FeatureWords.minute(waiver.at()))));
        file.corrections()
                .forEach(each -> lines.add(texts.say(
                        "clerk.correction_line", each.changes(), each.reason(), FeatureWords.minute(each.at()))));
        Tag heading = Blocks.heading(texts.say("clerk.look_at"));
        return Tag.of("div")
                .add(
                        heading,
                        lines.isEmpty()
                                ? Blocks.words("small", texts.say("clerk.nothing_to_look_at"))
                                : Blocks.points("plain", lines));
    }

    Tag custody() {
        List<String> lines = new ArrayList<>();
        for (CustodyMove move : file.moves()) {
            String tag = (move.tag() + " " + move.colour().orElse("")).strip();
            lines.add(texts.say(
                    "clerk.custody_line",
                    FeatureWords.minute(move.at()),
                    texts.say(move.to().key()),
                    move.person(),
                    move.place(),
                    tag.isEmpty() ? "-" : tag));
        }
        return Tag.of("div").add(Blocks.heading(texts.say("clerk.custody")), Blocks.points("plain", lines));
    }

    List<Tag> evidence() {
        Tag body = Tag.of("tbody");
        if (file.photos().isEmpty() && file.runs().isEmpty() && evidence.items().isEmpty()) {
            return List.of(
                    Blocks.heading(texts.say("clerk.evidence")),
                    Blocks.words("missing", texts.say("clerk.no_evidence")));
        }
        file.photos()
                .forEach(photo -> body.add(item(
                        texts.say(
                                "clerk.photo",
                                texts.say(photo.shows().key()),
                                photo.takenAt().toLocalDate()),
                        photo.sha256().hex())));
        file.runs()
                .forEach(run -> run.trace()
                        .ifPresent(trace -> body.add(item(texts.say("clerk.trace", run.run()), trace.hex()))));
        evidence.items()
                .forEach(item -> body.add(item(item.name(), item.sha256().hex())));
        return List.of(
                Blocks.heading(texts.say("clerk.evidence")),
                Tag.of("table", "hashes").add(body));
    }

    private static Tag item(String name, String sha256) {
        return Tag.of("tr")
                .add(Tag.withText("td", name), Tag.withText("td", sha256).set("class", "hash"));
    }
}
