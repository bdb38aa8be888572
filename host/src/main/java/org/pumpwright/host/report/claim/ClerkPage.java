package org.pumpwright.host.report.claim;

import java.util.List;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.Blocks;
import org.pumpwright.host.report.sheet.SheetPage;
import org.pumpwright.host.text.Texts;

/**
 * The page for the parts desk: does the evidence support the claim as filed? The measurement and the decision on coverage stand in
 * blocks of their own with signers of their own; whatever is missing is named. Thread-safe.
 */
public final class ClerkPage {
    private static final String PROGRAM = "Pumpwright";

    private final ClerkEvidence evidence;
    private final ClaimFile file;
    private final Texts texts;

    private ClerkPage(ClerkEvidence evidence, Texts texts) {
        this.evidence = evidence;
        this.file = evidence.file();
        this.texts = texts;
    }

    /** The page. */
    public static String html(ClerkEvidence evidence, Texts texts) {
        return new ClerkPage(evidence, texts).draw();
    }

    private String draw() {
        ClaimIntake intake = file.intake();
        SheetPage sheet =
                new SheetPage(texts, evidence.shop().orElse(PROGRAM), texts.say("clerk.title"), intake.claim());
        sheet.dense().practice(intake.practice() || file.runs().stream().anyMatch(ClaimRun::practice));
        ClerkFacts facts = new ClerkFacts(evidence, texts);
        ClerkVerdicts verdicts = new ClerkVerdicts(evidence, texts);
        ClerkLists lists = new ClerkLists(evidence, texts);
        return sheet.add(missing())
                .add(facts.unit(), facts.complaint())
                .add(Blocks.beside(
                        "halves",
                        Tag.of("div").add(verdicts.measurement(), lists.tests(), lists.stand()),
                        Tag.of("div")
                                .add(
                                        verdicts.decision(),
                                        Blocks.heading(texts.say("clerk.photos")),
                                        new PhotoPair(evidence, texts).draw(),
                                        lists.custody())))
                .add(lists.coverage())
                .add(lists.seen())
                .add(lists.evidence())
                .add(Blocks.lines(List.of(
                        texts.say("clerk.sign.technician"),
                        texts.say("clerk.sign.desk"),
                        texts.say("clerk.sign.second"))))
                .html();
    }

    /** What is missing comes first: nobody is to sign over a gap without having seen it. */
    private List<Tag> missing() {
        List<String> names = new ClerkFacts(evidence, texts).missing();
        return names.isEmpty()
                ? List.of(Blocks.words("small", texts.say("clerk.nothing_missing")))
                : List.of(Blocks.words("notice", texts.say("clerk.missing", String.join("; ", names))));
    }
}
