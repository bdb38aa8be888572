package org.pumpwright.host.report.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.Blocks;
import org.pumpwright.host.report.sheet.FactTable;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.report.sheet.SheetPage;
import org.pumpwright.host.report.sheet.VerdictBlock;
import org.pumpwright.host.text.Texts;

/**
 * The page that a customer takes home: is the unit in order, does it do the rate, what is to be looked at on the planter. Plain
 * words, no codes, nobody's doing, no decision on warranty. Thread-safe.
 */
public final class CustomerPage {
    private static final int CHART_WIDTH = 400;
    private static final int CHART_HEIGHT = 225;
    private static final String PROGRAM = "Pumpwright";

    private final RunRecord run;
    private final CustomerFacts facts;
    private final UnitSystem units;
    private final Texts texts;
    private final FeatureWords words;
    private final PlainWords plain;

    private CustomerPage(RunRecord run, CustomerFacts facts, UnitSystem units, Texts texts) {
        this.run = run;
        this.facts = facts;
        this.units = units;
        this.texts = texts;
        words = new FeatureWords(units, texts);
        plain = new PlainWords(run, words, texts);
    }

    /** Why a run gets no customer's page; empty when it gets one. A run that does not count must not leave the shop. */
    public static Optional<String> refusal(RunRecord run, Texts texts) {
        return run.grade().verdict() == Verdict.INVALID
                ? Optional.of(texts.say("customer.refused", run.id()))
                : Optional.empty();
    }

    /**
     * The page.
     *
     * @throws IllegalArgumentException when the run gets none, see {@link #refusal}
     */
    public static String html(RunRecord run, CustomerFacts facts, UnitSystem units, Texts texts) {
        refusal(run, texts).ifPresent(why -> {
            throw new IllegalArgumentException(why);
        });
        return new CustomerPage(run, facts, units, texts).draw();
    }

    private String draw() {
        SheetPage sheet = new SheetPage(texts, facts.shop().orElse(PROGRAM), texts.say("customer.title"), run.id());
        sheet.roomy().practice(run.subject().practice());
        sheet.add(
                VerdictBlock.big(run.grade().verdict(), plain.verdict(), plain.meaning()),
                unit(),
                Blocks.words("told", plain.complaint(facts.complaint())));
        return sheet.add(measured())
                .add(Blocks.beside("halves", done(), planter()))
                .add(Tag.of("p", "box small").text(texts.say("customer.pay")))
                .add(words.leftInEnglish())
                .html();
    }

    private Tag unit() {
        FactTable table = new FactTable(2)
                .add(texts.say("sheet.unit"), run.subject().modelTitle())
                .add(texts.say("sheet.serial"), given(run.subject().serial()))
                .add(texts.say("customer.tested"), FeatureWords.day(run.startedAt()));
        facts.claim()
                .ifPresentOrElse(
                        claim -> table.add(texts.say("customer.claim"), claim),
                        () -> table.missing(texts.say("customer.claim"), texts.say("sheet.not_given")));
        return table.draw();
    }

    private String given(String text) {
        return text.isBlank() ? texts.say("sheet.not_given") : text;
    }

    private List<Tag> measured() {
        HealthChart chart = new HealthChart(run.grade().features(), "customer", words, texts);
        Tag need = new NeedBlock(run, facts.need(), units, texts).draw();
        if (chart.isEmpty()) {
            return List.of(Blocks.words("small", texts.say("customer.no_graph")), need);
        }
        Tag graph = Tag.of("div")
                .add(
                        Blocks.heading(texts.say("customer.graph")),
                        chart.draw(CHART_WIDTH, CHART_HEIGHT),
                        chart.legend());
        return List.of(Blocks.beside("wide-left", graph, need));
    }

    private Tag done() {
        List<String> all = new ArrayList<>(plain.done());
        all.addAll(facts.done());
        Tag block = Tag.of("div").add(Blocks.heading(texts.say("customer.done")), Blocks.points("done", all));
        return block.add(Blocks.heading(texts.say("customer.number_title")), number());
    }

    private Tag number() {
        return facts.calibration()
                .map(this::number)
                .orElseGet(() -> Blocks.words("missing", texts.say("customer.number.missing")));
    }

    private Tag number(BucketRecord test) {
        return Tag.of("div", "box")
                .add(
                        Tag.withText("p", plain.number(test)).set("class", "figure"),
                        Tag.withText(
                                        "p",
                                        texts.say(
                                                "customer.number.meter",
                                                test.meter().serial(),
                                                test.job().performed(),
                                                test.id()))
                                .set("class", "small"));
    }

    private Tag planter() {
        return Tag.of("div")
                .add(Blocks.heading(texts.say("customer.check")), Blocks.ticks(plain.checks(facts.calibration())));
    }
}
