package org.pumpwright.host.report.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.claim.Sourced;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.Blocks;
import org.pumpwright.host.report.sheet.FactTable;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.report.sheet.SheetPage;
import org.pumpwright.host.report.sheet.VerdictBlock;
import org.pumpwright.host.text.Texts;

/**
 * The page for the factory: which unit, how much used, what failed and how, every parameter with its uncertainty, and how it was
 * measured. Nothing on it tells whose unit it was. Thread-safe.
 */
public final class FactoryPage {
    private static final int MARK = 46;
    /** The likeliest causes; more would hide that they are only likely. */
    private static final int CAUSES = 3;

    private final FactoryCase unit;
    private final Texts texts;
    private final FeatureWords words;

    private FactoryPage(FactoryCase unit, UnitSystem units, Texts texts) {
        this.unit = unit;
        this.texts = texts;
        this.words = new FeatureWords(units, texts);
    }

    /** The page. */
    public static String html(FactoryCase unit, UnitSystem units, Texts texts) {
        return new FactoryPage(unit, units, texts).draw();
    }

    private String draw() {
        FactoryCase.Run run = unit.run();
        SheetPage sheet = new SheetPage(texts, "Pumpwright", texts.say("factory.title"), run.id());
        FactoryFigures figures = new FactoryFigures(run, words, texts);
        sheet.dense().practice(unit.unit().practice());
        sheet.add(missing()).add(subject(), mode());
        if (speaks()) {
            sheet.add(figures.chart()).add(figures.parameters());
        } else {
            sheet.add(Blocks.words("notice", texts.say("factory.not_judged")));
        }
        return sheet.add(figures.read())
                .add(Blocks.heading(texts.say("factory.method")), figures.method())
                .add(Blocks.words("small", texts.say("factory.no_customer")))
                .add(Tag.of("p")
                        .add(
                                Tag.withText("span", texts.say("factory.hash") + " "),
                                Tag.withText("span", unit.sha256().hex()).set("class", "hash")))
                .add(words.leftInEnglish())
                .html();
    }

    private boolean speaks() {
        return unit.run().verdict() != Verdict.INVALID && unit.run().verdict() != Verdict.NOT_TESTED;
    }

    private List<Tag> missing() {
        List<String> names = new ArrayList<>();
        if (unit.unit().dateCode().isEmpty()) {
            names.add(texts.say("claim.missing.date-code"));
        }
        if (unit.unit().hours().isEmpty() && unit.unit().acres().isEmpty()) {
            names.add(texts.say("claim.missing.hours-or-acres"));
        }
        if (unit.claim().flatMap(FactoryCase.Claimed::category).isEmpty()) {
            names.add(texts.say("claim.missing.finding"));
        }
        return names.isEmpty()
                ? List.of()
                : List.of(Blocks.words("notice", texts.say("clerk.missing", String.join("; ", names))));
    }

    private Tag subject() {
        FactoryCase.Unit subject = unit.unit();
        FactTable table = new FactTable(2)
                .add(texts.say("factory.model"), subject.modelTitle() + " (" + subject.model() + ")")
                .add(texts.say("sheet.serial"), subject.serial());
        add(table, "clerk.date_code", subject.dateCode());
        add(table, "clerk.use", used());
        return table.draw();
    }

    private void add(FactTable table, String key, Optional<String> value) {
        value.ifPresentOrElse(
                known -> table.add(texts.say(key), known),
                () -> table.missing(texts.say(key), texts.say("sheet.not_known")));
    }

    private Optional<String> used() {
        List<String> known = new ArrayList<>();
        unit.unit().hours().ifPresent(hours -> known.add(counted(hours, "h")));
        unit.unit().acres().ifPresent(acres -> known.add(counted(acres, "acres")));
        return known.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", known));
    }

    private String counted(Sourced<Double> count, String of) {
        return ClerkFacts.plain(count.value()) + " " + of + " ("
                + texts.say("claim.source." + count.source().word()) + ")";
    }

    /** Failure mode: the verdict, the category, the likeliest causes. */
    private Tag mode() {
        FactoryCase.Run run = unit.run();
        Tag words = Tag.of("td", "words")
                .add(Tag.withText("p", VerdictBlock.word(run.verdict(), texts)).set("class", "word"));
        if (run.advisory()) {
            words.add(Tag.withText("p", texts.say("sheet.advisory")));
        }
        unit.claim()
                .ifPresent(claim -> words.add(Tag.withText("p", category(claim)).set("class", "strong"))
                        .add(Blocks.words("small", complaint(claim))));
        if (!run.causes().isEmpty() && speaks()) {
            words.add(Blocks.words("small", texts.say("factory.causes", causes(run.causes()))));
        }
        return Tag.of("table", "mode")
                .add(Tag.of("tr").add(Tag.of("td", "sign-cell").add(VerdictBlock.mark(run.verdict(), MARK)), words));
    }

    private String category(FactoryCase.Claimed claim) {
        return claim.category()
                .map(category -> category.name() + "  " + texts.say(category.key()))
                .orElse(texts.say("clerk.no_finding"));
    }

    private String complaint(FactoryCase.Claimed claim) {
        String reproduced =
                claim.reproduced().map(each -> texts.say(each.key())).orElse(texts.say("sheet.not_known"));
        String code = claim.complaint().isBlank() ? texts.say("sheet.not_given") : claim.complaint();
        String parts = claim.parts().isEmpty() ? texts.say("sheet.not_given") : String.join(", ", claim.parts());
        return texts.say("factory.complaint", code, reproduced, parts);
    }

    private String causes(List<Cause> causes) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < Math.min(CAUSES, causes.size()); i++) {
            names.add((i + 1) + ". " + words.stored(causes.get(i).name()));
        }
        return String.join("  ", names);
    }
}
