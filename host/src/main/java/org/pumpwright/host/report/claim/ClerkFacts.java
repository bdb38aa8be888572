package org.pumpwright.host.report.claim;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.ComplaintAsMade;
import org.pumpwright.host.claim.Sourced;
import org.pumpwright.host.claim.TimeInUse;
import org.pumpwright.host.claim.UnitAsReceived;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.Blocks;
import org.pumpwright.host.report.sheet.FactTable;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.text.Texts;

/** What was written down when the unit came. Thread-safe. */
final class ClerkFacts {
    private final ClerkEvidence evidence;
    private final ClaimIntake intake;
    private final Texts texts;

    ClerkFacts(ClerkEvidence evidence, Texts texts) {
        this.evidence = evidence;
        this.intake = evidence.file().intake();
        this.texts = texts;
    }

    Tag unit() {
        UnitAsReceived unit = intake.unit();
        TimeInUse use = intake.use();
        FactTable table = new FactTable(3);
        add(table, "clerk.part", unit.model());
        add(table, "sheet.serial", unit.serial());
        add(table, "clerk.date_code", unit.dateCode().orElse(""));
        add(table, "clerk.customer", intake.people().customer());
        table.add(texts.say("clerk.received"), FeatureWords.minute(intake.received()));
        add(table, "clerk.taken_by", intake.takenBy());
        add(table, "clerk.sold", day(use.sold()));
        add(table, "clerk.first_used", day(use.firstUsed()));
        add(table, "clerk.use", hours(use));
        add(table, "clerk.product", intake.planter().product());
        add(table, "clerk.seal", unit.seal());
        add(table, "clerk.accessories", unit.accessories());
        add(table, "clerk.tag", unit.tag());
        table.add(texts.say("clerk.rinsed"), rinsed());
        table.add(
                texts.say("clerk.where"),
                texts.say(evidence.file().whereabouts().to().key()) + ", "
                        + evidence.file().whereabouts().place());
        return table.draw();
    }

    private void add(FactTable table, String key, String value) {
        if (value.isBlank()) {
            table.missing(texts.say(key), texts.say("clerk.is_missing"));
        } else {
            table.add(texts.say(key), value);
        }
    }

    private String day(Optional<Sourced<LocalDate>> day) {
        return day.map(each -> each.value() + " (" + source(each) + ")").orElse("");
    }

    private String hours(TimeInUse use) {
        List<String> known = new ArrayList<>();
        use.hours().ifPresent(each -> known.add(plain(each.value()) + " h (" + source(each) + ")"));
        use.acres().ifPresent(each -> known.add(plain(each.value()) + " acres (" + source(each) + ")"));
        return String.join(", ", known);
    }

    static String plain(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.1f", value);
    }

    private String source(Sourced<?> sourced) {
        return texts.say("claim.source." + sourced.source().word());
    }

    private String rinsed() {
        return intake.decontamination()
                .confirmedBy()
                .map(person -> texts.say(
                        "clerk.rinsed.by", person, intake.decontamination().rinses()))
                .orElseGet(() -> texts.say("clerk.rinsed.not"));
    }

    /** The complaint as stated, as a code, and whether it showed. */
    Tag complaint() {
        ComplaintAsMade complaint = intake.complaint();
        String words =
                complaint.words().isBlank() ? texts.say("clerk.is_missing") : "\u201C" + complaint.words() + "\u201D";
        String code = complaint.code().isBlank() ? texts.say("clerk.is_missing") : complaint.code();
        Tag block = Tag.of("div", "box complaint")
                .add(Tag.of("p")
                        .add(Tag.withText("span", texts.say("clerk.complaint") + " "), Tag.withText("b", words)))
                .add(Tag.of("p")
                        .add(
                                Tag.withText("span", texts.say("clerk.code") + " "),
                                Tag.withText("b", code),
                                Tag.withText("span", ". " + texts.say("clerk.reproduced") + " "),
                                Tag.withText("b", reproduced())));
        List<String> more = new ArrayList<>();
        if (!complaint.conditions().isBlank()) {
            more.add(texts.say("clerk.when", complaint.conditions()));
        }
        if (!complaint.alreadySwapped().isBlank()) {
            more.add(texts.say("clerk.swapped", complaint.alreadySwapped()));
        }
        return more.isEmpty() ? block : block.add(Blocks.words("small", String.join(". ", more)));
    }

    private String reproduced() {
        return evidence.file()
                .finding()
                .map(finding -> texts.say(finding.reproduced().key()).toUpperCase(Locale.ROOT))
                .orElseGet(() -> texts.say("clerk.no_finding"));
    }

    /** Everything that is missing, by name. */
    List<String> missing() {
        List<String> names = new ArrayList<>(evidence.file().missing().stream()
                .map(missing -> texts.say(missing.key()))
                .toList());
        if (evidence.masterCheck().isEmpty()) {
            names.add(texts.say("clerk.missing.master_check"));
        }
        if (evidence.coverage().isEmpty()) {
            names.add(texts.say("clerk.missing.coverage_rules"));
        }
        return names;
    }
}
