package org.pumpwright.host.report.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.Blocks;
import org.pumpwright.host.report.sheet.FactTable;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.text.Texts;

/** What was measured on a unit and how: chart, parameters with their uncertainty, conditions and method. Thread-safe. */
final class FactoryFigures {
    private static final int CHART_WIDTH = 690;
    private static final int CHART_HEIGHT = 170;

    private final FactoryCase.Run run;
    private final Texts texts;
    private final FeatureWords words;

    FactoryFigures(FactoryCase.Run run, FeatureWords words, Texts texts) {
        this.run = run;
        this.words = words;
        this.texts = texts;
    }

    List<Tag> chart() {
        HealthChart chart = new HealthChart(run.features(), "factory", words, texts);
        return chart.isEmpty()
                ? List.of()
                : List.of(
                        Blocks.heading(texts.say("factory.graph")),
                        chart.draw(CHART_WIDTH, CHART_HEIGHT),
                        chart.legend());
    }

    List<Tag> parameters() {
        List<FeatureJudgement> judged =
                run.features().stream().filter(FeatureJudgement::judged).toList();
        if (judged.isEmpty()) {
            return List.of();
        }
        Tag body = Tag.of("tbody");
        judged.forEach(feature -> body.add(row(feature)));
        return List.of(
                Blocks.heading(texts.say("factory.parameters")),
                Blocks.table(
                        1,
                        List.of(
                                texts.say("factory.column.parameter"),
                                texts.say("factory.column.volts"),
                                texts.say("factory.column.value"),
                                texts.say("factory.column.uncertainty"),
                                texts.say("factory.column.limits"),
                                texts.say("factory.column.result")),
                        body),
                Blocks.words("small", texts.say("factory.note")));
    }

    private Tag row(FeatureJudgement feature) {
        FeatureWords.Rounded value = words.rounded(feature.feature().unit(), feature.measured());
        String volts = Double.isFinite(feature.volts()) ? String.format(Locale.ROOT, "%.2f V", feature.volts()) : "-";
        return Tag.of("tr")
                .add(
                        Blocks.cell("words strong", words.name(feature.feature())),
                        Blocks.cell("figure-cell", volts),
                        Blocks.cell("figure-cell strong", value.value()),
                        Blocks.cell("figure-cell", value.uncertainty()),
                        Blocks.cell("figure-cell", words.limits(feature)),
                        Blocks.cell("figure-cell strong", words.decision(feature, run.verdict())));
    }

    /** What the steps have read and no limit was held against, the figures of the pump among it, in two columns. */
    List<Tag> read() {
        List<Tag> rows = new ArrayList<>();
        for (Finding finding : run.figures()) {
            if (finding.outcome() instanceof Finding.Figure figure && !isJudged(finding)) {
                FeatureWords.Rounded value = words.rounded(figure.unit(), figure.value());
                rows.add(Tag.of("tr")
                        .add(
                                Blocks.cell("words strong", words.reading(finding.name())),
                                Blocks.cell("figure-cell strong", value.value()),
                                Blocks.cell("figure-cell", value.uncertainty())));
            }
        }
        if (rows.isEmpty()) {
            return List.of();
        }
        int half = (rows.size() + 1) / 2;
        return List.of(
                Blocks.heading(texts.say("factory.figures")),
                Blocks.beside(
                        "halves",
                        figures(rows.subList(0, half)),
                        rows.size() > 1 ? figures(rows.subList(half, rows.size())) : Tag.of("p")));
    }

    private boolean isJudged(Finding finding) {
        return run.features().stream()
                .anyMatch(feature -> feature.judged()
                        && feature.feature().quantity() == Feature.Kind.READING
                        && feature.feature().words().equals(finding.name()));
    }

    private Tag figures(List<Tag> rows) {
        return Blocks.table(
                1,
                List.of(
                        texts.say("factory.column.parameter"),
                        texts.say("factory.column.value"),
                        texts.say("factory.column.uncertainty")),
                Tag.of("tbody").add(rows));
    }

    /** A name as the first word of a line. */
    private String name(String key) {
        String words = texts.say(key);
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    Tag method() {
        FactTable table = new FactTable(2)
                .add(name("customer.tested"), FeatureWords.minute(run.startedAt()))
                .add(name("factory.attempt"), Integer.toString(run.attempt()))
                .add(name("retest.plan"), run.plan())
                .add(name("retest.rules"), run.rules().orElse(texts.say("sheet.none")))
                .add(
                        name("retest.curve"),
                        run.curve()
                                .map(curve -> texts.say("factory.curve", curve.label(), curve.units()))
                                .orElse(texts.say("sheet.none")))
                .add(
                        name("retest.driver"),
                        String.format(
                                Locale.ROOT,
                                "%s, %.0f Hz",
                                run.conditions().driver(),
                                run.conditions().pwmHz()))
                .add(
                        name("factory.load"),
                        run.conditions().nozzle() + ", " + run.conditions().fluid())
                .add(
                        name("retest.stand"),
                        run.stand().id() + ", " + run.stand().board() + " "
                                + run.stand().firmware())
                .add(name("factory.software"), run.software())
                .add(name("factory.record"), run.id());
        Tag block = Tag.of("div").add(table.draw());
        return run.rule().isBlank()
                ? block
                : block.add(Blocks.words("small", texts.say("factory.rule", words.stored(run.rule()))));
    }
}
