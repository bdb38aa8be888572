package org.pumpwright.host.report.claim;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.demand.Margin;
import org.pumpwright.host.demand.Planter;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.Blocks;
import org.pumpwright.host.report.sheet.FactTable;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.report.sheet.SheetPage;
import org.pumpwright.host.text.Texts;

/** What the planter needs against what the unit gives, as two bars and a sentence. Thread-safe. */
final class NeedBlock {
    private static final int WIDTH = 280;
    private static final int HEIGHT = 104;
    private static final double LONGEST = 262;
    private static final double PERCENT = 100;

    private final RunRecord run;
    private final Optional<PlanterNeed> need;
    private final UnitSystem units;
    private final Texts texts;
    private final FeatureWords words;

    NeedBlock(RunRecord run, Optional<PlanterNeed> need, UnitSystem units, Texts texts) {
        this.run = run;
        this.need = need;
        this.units = units;
        this.texts = texts;
        this.words = new FeatureWords(units, texts);
    }

    Tag draw() {
        Tag block = Tag.of("div").add(Blocks.heading(texts.say("customer.need")));
        return need.map(known -> compared(block, known)).orElseGet(() -> asked(block));
    }

    private Tag compared(Tag block, PlanterNeed known) {
        Margin margin = known.margin();
        block.add(bars(margin))
                .add(Tag.of("p", "notice").text(finding(known)))
                .add(Blocks.words("small", inputs(known)));
        if (known.nozzles()) {
            block.add(Blocks.words("small", texts.say("customer.need.as_water")));
        }
        return block;
    }

    private Tag bars(Margin margin) {
        double needed = margin.needed().m3PerSecond();
        double there = Math.max(0, margin.available().value());
        double scale = LONGEST / Math.max(needed * (1 + margin.wanted()), there);
        double wanted = 2 + needed * (1 + margin.wanted()) * scale;
        Tag svg = Tag.of("svg")
                .set("viewBox", "0 0 " + WIDTH + " " + HEIGHT)
                .set("role", "img")
                .set("aria-label", texts.say("customer.need"))
                .add(
                        label(12, texts.say("customer.need.needs", flow(needed))),
                        bar(18, needed * scale, "need"),
                        label(62, texts.say("customer.need.gives", flow(there))),
                        bar(68, there * scale, "gives"),
                        mark(wanted, 14),
                        mark(wanted, 64));
        return SheetPage.drawing(svg, WIDTH, HEIGHT);
    }

    private static Tag bar(double y, double width, String styleClass) {
        return Tag.of("rect", styleClass)
                .set("x", 2)
                .set("y", y)
                .set("width", Math.max(1, width))
                .set("height", 26);
    }

    /** How far the bars must reach for the spare that is wanted. */
    private static Tag mark(double x, double from) {
        return Tag.of("line", "spare").set("x1", x).set("y1", from).set("x2", x).set("y2", from + 34);
    }

    private static Tag label(double y, String words) {
        return Tag.of("text", "note").set("x", 2).set("y", y).text(words);
    }

    private String finding(PlanterNeed known) {
        String key = "customer.need." + known.margin().finding().name().toLowerCase(Locale.ROOT);
        String spare =
                String.format(Locale.ROOT, "%.0f %%", PERCENT * known.margin().spare());
        String wanted =
                String.format(Locale.ROOT, "%.0f %%", PERCENT * known.margin().wanted());
        String fastest = known.fastest()
                .map(speed -> " " + texts.say("customer.need.fastest", speed.print(units)))
                .orElse("");
        return texts.say(key, spare, wanted) + fastest;
    }

    private String inputs(PlanterNeed known) {
        Planter planter = known.planter();
        String spacing = units == UnitSystem.US
                ? String.format(Locale.ROOT, "%.0f in", planter.spacingMetres() / Planter.METRES_PER_INCH)
                : String.format(Locale.ROOT, "%.0f cm", PERCENT * planter.spacingMetres());
        return texts.say(
                "customer.need.inputs",
                planter.rows(),
                spacing,
                planter.rate().print(units),
                planter.speed().print(units),
                known.product());
    }

    /** The planter's numbers are not known: each is named, with room to write. */
    private Tag asked(Tag block) {
        gives().ifPresent(gives ->
                block.add(Tag.of("p").add(Tag.withText("b", texts.say("customer.need.gives", gives)))));
        FactTable blanks = new FactTable(1);
        List.of("rows", "spacing", "rate", "speed", "product")
                .forEach(
                        blank -> blanks.missing(texts.say("customer.need." + blank), texts.say("customer.need.blank")));
        return block.add(Blocks.words("small", texts.say("customer.need.ask")), blanks.draw());
    }

    private Optional<String> gives() {
        return PlanterNeed.most(run).map(FeatureJudgement::measured).map(measured -> flow(measured.value()));
    }

    private String flow(double m3PerSecond) {
        return words.value(FindingUnit.M3_PER_SECOND, m3PerSecond);
    }
}
