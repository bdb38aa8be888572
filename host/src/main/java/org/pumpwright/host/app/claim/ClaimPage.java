package org.pumpwright.host.app.claim;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.CoverageAssessment;
import org.pumpwright.host.claim.CoverageDecision;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.Finding;
import org.pumpwright.host.claim.Sentence;
import org.pumpwright.host.claim.Sourced;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/** A claim on one page of text, in English. Confined to one thread. */
public final class ClaimPage {
    private static final Texts TEXTS = Texts.in(Language.EN);

    private final StringBuilder page = new StringBuilder();

    private ClaimPage() {}

    /** Everything that is known of it; the people only where asked for. */
    public static String of(ClaimReview.Reviewed reviewed, boolean people) {
        ClaimPage page = new ClaimPage();
        ClaimFile file = reviewed.file();
        page.head(file);
        page.intake(file.intake(), people);
        page.evidence(file);
        page.section(
                "Finding (technician)", file.finding().map(ClaimPage::finding).orElse(List.of()));
        reviewed.coverage().ifPresent(page::coverage);
        page.section("Decision (desk)", file.decision().map(ClaimPage::decision).orElse(List.of()));
        page.section(
                "Look at",
                file.flags().stream()
                        .map(flag -> say(flag.sentence()).replaceFirst("^Look at: ", ""))
                        .toList());
        page.section(
                "Missing",
                file.missing().stream().map(item -> TEXTS.say(item.key())).toList());
        page.section(
                "Corrections (both versions stay on record)",
                file.corrections().stream()
                        .map(each -> "%s by %s, %s: %s%s"
                                .formatted(
                                        each.corrected(),
                                        each.by(),
                                        each.at(),
                                        each.reason(),
                                        each.changes().isEmpty() ? "" : " (" + each.changes() + ")"))
                        .toList());
        return page.page.toString();
    }

    private void head(ClaimFile file) {
        CustodyMove here = file.whereabouts();
        page.append("CLAIM %s   %s since %s\n"
                .formatted(
                        file.number(),
                        TEXTS.say(here.to().key()).toUpperCase(Locale.ROOT),
                        here.at().toLocalDate()));
        if (file.intake().practice()) {
            page.append("PRACTICE: simulated or invented, of no real unit\n");
        }
    }

    private void intake(ClaimIntake intake, boolean people) {
        title("Intake");
        fact("received", intake.received().toString());
        if (people) {
            fact("brought by", intake.people().broughtBy());
            fact("contact", intake.people().contact());
            fact("customer", intake.people().customer());
        }
        fact(
                "unit",
                "%s %s".formatted(intake.unit().kind(), intake.unit().model()).strip());
        fact("serial", intake.unit().serial());
        fact("date code", intake.unit().dateCode().orElse(""));
        fact("accessories", intake.unit().accessories());
        fact("seal", intake.unit().seal());
        fact("tag", intake.unit().tag());
        sourced("sold", intake.use().sold());
        sourced("delivered", intake.use().delivered());
        sourced("first used", intake.use().firstUsed());
        sourced("hours", intake.use().hours());
        sourced("acres", intake.use().acres());
        fact("planter", intake.planter().makeUp());
        fact("product", intake.planter().product());
        fact("last flush", intake.planter().lastFlush());
        fact(
                "complaint",
                "\"%s\" (%s)"
                        .formatted(
                                intake.complaint().words(), intake.complaint().code()));
        fact("conditions", intake.complaint().conditions());
        fact("swapped", intake.complaint().alreadySwapped());
        fact("clean", clean(intake));
        fact("worth", intake.value().map(value -> value.text()).orElse(""));
    }

    private static String clean(ClaimIntake intake) {
        String declared = intake.decontamination()
                .declared()
                .map(yes -> yes ? "declared" : "declared not clean")
                .orElse("not declared");
        return declared
                + intake.decontamination()
                        .confirmedBy()
                        .map(name -> ", rinsed %d times, confirmed by %s"
                                .formatted(intake.decontamination().rinses(), name))
                        .orElse(", not confirmed");
    }

    private void evidence(ClaimFile file) {
        section(
                "Custody",
                file.moves().stream()
                        .map(move -> "%s  %-18s %s, %s%s%s"
                                .formatted(
                                        move.at(),
                                        TEXTS.say(move.to().key()),
                                        move.person(),
                                        move.place(),
                                        move.tag().isEmpty() ? "" : ", tag " + move.tag(),
                                        move.colour().map(word -> ", " + word).orElse("")))
                        .toList());
        section(
                "Photos",
                file.photos().stream()
                        .map(photo -> "%-14s %s, %s, %s"
                                .formatted(
                                        TEXTS.say(photo.shows().key()),
                                        photo.takenAt(),
                                        TEXTS.say(photo.by().key()),
                                        photo.sha256().hex().substring(0, 16)))
                        .toList());
        section(
                "Seen",
                file.observations().stream()
                        .map(each -> "%s%s (%s, %s)"
                                .formatted(
                                        TEXTS.say(each.seen().key()),
                                        each.words().isEmpty() ? "" : ": " + each.words(),
                                        each.person(),
                                        each.at().toLocalDate()))
                        .toList());
        section(
                "Gone past",
                file.waivers().stream()
                        .map(each ->
                                "%s: %s, %s".formatted(TEXTS.say(each.step().key()), each.person(), each.reason()))
                        .toList());
        section(
                "Runs",
                file.runs().stream()
                        .map(run -> "%s  %-13s %s, %s%s"
                                .formatted(
                                        run.run(),
                                        run.verdict(),
                                        run.plan(),
                                        run.technician(),
                                        run.regradedFrom()
                                                .map(first -> ", graded again of " + first)
                                                .orElse("")))
                        .toList());
    }

    private static List<String> finding(Finding finding) {
        return List.of(
                "%s  %s"
                        .formatted(
                                finding.category(), TEXTS.say(finding.category().key())),
                "complaint reproduced: " + TEXTS.say(finding.reproduced().key()),
                "basis: " + finding.basis(),
                "parts: " + (finding.parts().isEmpty() ? "none named" : String.join(", ", finding.parts())),
                "tests: " + (finding.tests().isEmpty() ? "none" : String.join(", ", finding.tests())),
                "signed: %s, %s".formatted(finding.signer(), finding.at()));
    }

    private void coverage(CoverageAssessment assessment) {
        section(
                "Coverage rules %s (no decision)".formatted(assessment.rules()),
                assessment.lines().stream()
                        .map(line -> "%-32s %-8s %s  [%s]"
                                .formatted(
                                        TEXTS.say("claim.rule." + line.rule()),
                                        TEXTS.say(line.holds().key()),
                                        say(line.because()),
                                        line.where()))
                        .toList());
    }

    private static List<String> decision(CoverageDecision decision) {
        return List.of(
                TEXTS.say(decision.outcome().key()),
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
        return file.missing().stream().map(item -> TEXTS.say(item.key())).collect(Collectors.joining("; "));
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

    private static String say(Sentence sentence) {
        return TEXTS.say(sentence.key(), sentence.values().toArray());
    }

    private <T> void sourced(String what, Optional<Sourced<T>> value) {
        fact(
                what,
                value.map(known -> "%s (%s)"
                                .formatted(
                                        known.value(),
                                        TEXTS.say(
                                                "claim.source." + known.source().word())))
                        .orElse(""));
    }

    private void fact(String what, String value) {
        page.append("  %-13s%s\n".formatted(what, value.isEmpty() ? "not given" : value));
    }

    private void title(String title) {
        page.append('\n').append(title).append('\n');
    }

    private void section(String title, List<String> lines) {
        title(title);
        if (lines.isEmpty()) {
            page.append("  none\n");
        }
        lines.forEach(line -> page.append("  ").append(line).append('\n'));
    }
}
