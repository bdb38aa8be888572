package org.pumpwright.host.app.claim;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.Correction;
import org.pumpwright.host.claim.CoverageAssessment;
import org.pumpwright.host.claim.CoverageDecision;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.Finding;

/** A claim on one page of text, in English. Thread-safe. */
public final class ClaimPage {
    private ClaimPage() {}

    /** Everything that is known of it; the people only where asked for. */
    public static String of(ClaimReview.Reviewed reviewed, boolean people) {
        PageText page = new PageText();
        ClaimFile file = reviewed.file();
        head(page, file);
        IntakeOnPage.add(page, file.intake(), people);
        EvidenceOnPage.add(page, file);
        page.section(
                "Finding (technician)", file.finding().map(ClaimPage::finding).orElse(List.of()));
        reviewed.coverage().ifPresent(assessment -> coverage(page, assessment));
        page.section("Decision (desk)", file.decision().map(ClaimPage::decision).orElse(List.of()));
        page.section(
                "Look at",
                file.flags().stream()
                        .map(flag -> PageText.say(flag.sentence()).replaceFirst("^Look at: ", ""))
                        .toList());
        page.section(
                "Missing",
                file.missing().stream().map(item -> PageText.say(item.key())).toList());
        page.section(
                "Corrections (both versions stay on record)",
                file.corrections().stream().map(ClaimPage::correction).toList());
        return page.text();
    }

    private static void head(PageText page, ClaimFile file) {
        CustodyMove here = file.whereabouts();
        page.line("CLAIM %s   %s since %s"
                .formatted(
                        file.number(),
                        PageText.say(here.to().key()).toUpperCase(Locale.ROOT),
                        here.at().toLocalDate()));
        if (file.intake().practice()) {
            page.line("PRACTICE: simulated or invented, of no real unit");
        }
    }

    private static String correction(Correction each) {
        return "%s by %s, %s: %s%s"
                .formatted(
                        each.corrected(),
                        each.by(),
                        each.at(),
                        each.reason(),
                        each.changes().isEmpty() ? "" : " (" + each.changes() + ")");
    }

    private static List<String> finding(Finding finding) {
        return List.of(
                "%s  %s"
                        .formatted(
                                finding.category(),
                                PageText.say(finding.category().key())),
                "complaint reproduced: " + PageText.say(finding.reproduced().key()),
                "basis: " + finding.basis(),
                "parts: " + (finding.parts().isEmpty() ? "none named" : String.join(", ", finding.parts())),
                "tests: " + (finding.tests().isEmpty() ? "none" : String.join(", ", finding.tests())),
                "signed: %s, %s".formatted(finding.signer(), finding.at()));
    }

    private static void coverage(PageText page, CoverageAssessment assessment) {
        page.section(
                "Coverage rules %s (no decision)".formatted(assessment.rules()),
                assessment.lines().stream()
                        .map(line -> "%-32s %-8s %s  [%s]"
                                .formatted(
                                        PageText.say("claim.rule." + line.rule()),
                                        PageText.say(line.holds().key()),
                                        PageText.say(line.because()),
                                        line.where()))
                        .toList());
    }

    private static List<String> decision(CoverageDecision decision) {
        return List.of(
                PageText.say(decision.outcome().key()),
                "reason: " + decision.reason(),
                "rules: " + decision.rules().orElse("none"),
                "amount: " + decision.amount().map(value -> value.text()).orElse("not given"),
                "signed: %s%s, %s"
                        .formatted(
                                decision.signer(),
                                decision.second().map(name -> " and " + name).orElse(""),
                                decision.at()));
    }

    /** What it lacks, on one line. */
    public static String missing(ClaimFile file) {
        return file.missing().stream().map(item -> PageText.say(item.key())).collect(Collectors.joining("; "));
    }

    /** One line of a list of claims. */
    public static String line(ClaimList.Line line) {
        ClaimIntake intake = line.file().intake();
        return "%-12s %3d days, %d here  %s %s  %s%s"
                .formatted(
                        line.file().number(),
                        line.days(),
                        line.daysHere(),
                        intake.unit().model(),
                        intake.unit().serial(),
                        intake.complaint().code(),
                        line.file()
                                .decision()
                                .map(decision -> "  " + decision.outcome().word())
                                .orElse(""));
    }
}
