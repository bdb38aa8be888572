package org.pumpwright.host.report.claim;

import java.util.List;
import java.util.Locale;
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
    private static final int CHART_HEIGHT = 200;

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

    /** What the steps have read, the figures of the pump among it. */
    List<Tag> read() {
        Tag body = Tag.of("tbody");
        int rows = 0;
        for (Finding finding : run.figures()) {
            if (finding.outcome() instanceof Finding.Figure figure) {
                FeatureWords.Rounded value = words.rounded(figure.unit(), figure.value());
                body.add(Tag.of("tr")
                        .add(
                                Blocks.cell("words strong", words.reading(finding.name())),
                                Blocks.cell("figure-cell strong", value.value()),
                                Blocks.cell("figure-cell", value.uncertainty())));
                rows++;
            }
        }
        return rows == 0
                ? List.of()
                : List.of(
                        Blocks.heading(texts.say("factory.figures")),
                        Blocks.table(
                                1,
                                List.of(
                                        texts.say("factory.column.parameter"),
                                        texts.say("factory.column.value"),
                                        texts.say("factory.column.uncertainty")),
                                body));
    }

    Tag method() {
        FactTable table = new FactTable(2)
                .add(texts.say("customer.tested"), FeatureWords.minute(run.startedAt()))
                .add(texts.say("factory.attempt"), Integer.toString(run.attempt()))
                .add(texts.say("retest.plan"), run.plan())
                .add(texts.say("retest.rules"), run.rules().orElse(texts.say("sheet.none")))
                .add(
                        texts.say("retest.curve"),
                        run.curve()
                                .map(curve -> texts.say("factory.curve", curve.label(), curve.units()))
                                .orElse(texts.say("sheet.none")))
                .add(
                        texts.say("retest.driver"),
                        String.format(
                                Locale.ROOT,
                                "%s, %.0f Hz",
                                run.conditions().driver(),
                                run.conditions().pwmHz()))
                .add(
                        texts.say("factory.load"),
                        run.conditions().nozzle() + ", " + run.conditions().fluid())
                .add(
                        texts.say("retest.stand"),
                        run.stand().id() + ", " + run.stand().board() + " "
                                + run.stand().firmware())
                .add(texts.say("factory.software"), run.software())
                .add(texts.say("factory.record"), run.id());
        Tag block = Tag.of("div").add(table.draw());
        return run.rule().isBlank()
                ? block
                : block.add(Blocks.words("small", texts.say("factory.rule", words.stored(run.rule()))));
    }
}
