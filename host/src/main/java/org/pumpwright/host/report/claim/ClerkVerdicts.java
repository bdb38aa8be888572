package org.pumpwright.host.report.claim;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.claim.CoverageDecision;
import org.pumpwright.host.claim.Finding;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.Blocks;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.report.sheet.VerdictBlock;
import org.pumpwright.host.text.Texts;

/** What was measured, and apart from it what was decided: two blocks, two signers. Thread-safe. */
final class ClerkVerdicts {
    private static final int MARK = 40;

    private final ClerkEvidence evidence;
    private final Texts texts;

    ClerkVerdicts(ClerkEvidence evidence, Texts texts) {
        this.evidence = evidence;
        this.texts = texts;
    }

    Tag measurement() {
        Tag block = Tag.of("div", "box").add(Tag.withText("b", texts.say("clerk.measurement")));
        verdict().ifPresent(block::add);
        if (evidence.run().map(run -> run.grade().advisory()).orElse(false)) {
            block.add(Tag.withText("p", texts.say("sheet.advisory")));
        }
        return evidence.file()
                .finding()
                .map(finding -> finding(block, finding))
                .orElseGet(() -> block.add(Blocks.words("missing", texts.say("clerk.no_finding"))));
    }

    /** The verdict of the run that the finding rests on. */
    private Optional<Tag> verdict() {
        return last().map(run -> Tag.of("table", "inner")
                .add(Tag.of("tr")
                        .add(
                                Tag.of("td", "mark-cell").add(VerdictBlock.mark(run.verdict(), MARK)),
                                Tag.of("td", "words")
                                        .add(
                                                Tag.withText("p", VerdictBlock.word(run.verdict(), texts))
                                                        .set("class", "word"),
                                                Tag.withText("p", texts.say("clerk.by_test", run.run()))))));
    }

    private Optional<ClaimRun> last() {
        List<ClaimRun> runs = evidence.file().runs();
        Optional<String> named = evidence.run().map(run -> run.id());
        return runs.stream()
                .filter(run -> named.equals(Optional.of(run.run())))
                .findFirst()
                .or(() -> runs.isEmpty() ? Optional.empty() : Optional.of(runs.get(runs.size() - 1)));
    }

    private Tag finding(Tag block, Finding finding) {
        block.add(Tag.of("p")
                        .add(
                                Tag.withText("b", finding.category().name() + "  "),
                                Tag.withText("b", texts.say(finding.category().key()) + ".")))
                .add(Blocks.words("small", texts.say("clerk.basis", finding.basis())));
        if (!finding.parts().isEmpty()) {
            block.add(Blocks.words("small", texts.say("clerk.parts", String.join(", ", finding.parts()))));
        }
        if (!finding.tests().isEmpty()) {
            block.add(Blocks.words("small", texts.say("clerk.rests_on", String.join(", ", finding.tests()))));
        }
        return block.add(
                Tag.withText("p", texts.say("clerk.signed", finding.signer(), FeatureWords.minute(finding.at()))));
    }

    Tag decision() {
        Tag block = Tag.of("div", "box").add(Tag.withText("b", texts.say("clerk.decision")));
        return evidence.file()
                .decision()
                .map(decision -> decision(block, decision))
                .orElseGet(() -> block.add(Blocks.words("missing", texts.say("clerk.no_decision")))
                        .add(Blocks.words("small", texts.say("clerk.choices"))));
    }

    private Tag decision(Tag block, CoverageDecision decision) {
        block.add(Blocks.words("word", texts.say(decision.outcome().key())))
                .add(Blocks.words("small", texts.say("clerk.reason", decision.reason())));
        decision.amount()
                .ifPresent(amount -> block.add(Blocks.words("small", texts.say("clerk.amount", amount.text()))));
        block.add(Blocks.words(
                "small", texts.say("clerk.rules_looked_at", decision.rules().orElse(texts.say("sheet.none")))));
        block.add(Tag.withText("p", texts.say("clerk.signed", decision.signer(), FeatureWords.minute(decision.at()))));
        decision.second().ifPresent(second -> block.add(Tag.withText("p", texts.say("clerk.second", second))));
        return block;
    }
}
