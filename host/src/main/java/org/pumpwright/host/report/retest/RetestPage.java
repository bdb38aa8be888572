package org.pumpwright.host.report.retest;

import java.util.List;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.Blocks;
import org.pumpwright.host.report.sheet.FactTable;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.report.sheet.SheetPage;
import org.pumpwright.host.report.sheet.VerdictBlock;
import org.pumpwright.host.text.Texts;

/**
 * Two runs of one unit, one over the other: what it was before and what it is after, whether each judged feature moved by more than
 * runs differ by chance, and what was not the same in both runs. Thread-safe.
 */
public final class RetestPage {
    private static final int FLOW_WIDTH = 410;
    private static final int AMPS_WIDTH = 285;
    private static final int HEIGHT = 215;
    private static final int MARK = 46;

    private final Retest retest;
    private final RunSpread spread;
    private final Texts texts;
    private final FeatureWords words;

    private RetestPage(Retest retest, RunSpread spread, UnitSystem units, Texts texts) {
        this.retest = retest;
        this.spread = spread;
        this.texts = texts;
        this.words = new FeatureWords(units, texts);
    }

    /**
     * The page.
     *
     * @param one a run
     * @param other another run of the same unit; which of the two came first is told by their times
     * @param spread from run to run, of the curve that both runs were held against; {@link RunSpread#NOT_KNOWN} without one
     * @throws IllegalArgumentException when the runs are not of the same unit
     */
    public static String html(RunRecord one, RunRecord other, RunSpread spread, UnitSystem units, Texts texts) {
        return new RetestPage(Retest.of(one, other), spread, units, texts).draw();
    }

    private String draw() {
        RunRecord before = retest.before();
        RunRecord after = retest.after();
        SheetPage sheet = new SheetPage(texts, "Pumpwright", texts.say("retest.title"), after.id());
        sheet.practice(before.subject().practice() || after.subject().practice());
        sheet.add(unit(), turn());
        if (!retest.speaksOfTheUnit()) {
            sheet.add(Blocks.words("notice", texts.say("retest.not_comparable")));
        }
        ChangeTable changes = new ChangeTable(retest, spread, words, texts);
        return sheet.add(charts())
                .add(Blocks.heading(texts.say("retest.features")))
                .add(changes.draw())
                .add(changes.footnote())
                .add(Blocks.heading(texts.say("retest.conditions")))
                .add(ConditionRow.compared(retest, texts))
                .add(Blocks.words("small", texts.say("retest.foot")))
                .add(words.leftInEnglish())
                .html();
    }

    private Tag unit() {
        RunRecord.Subject subject = retest.after().subject();
        return new FactTable(2)
                .add(texts.say("sheet.unit"), subject.modelTitle())
                .add(texts.say("sheet.serial"), subject.serial())
                .draw();
    }

    private Tag turn() {
        return VerdictBlock.change(
                VerdictBlock.mark(verdict(retest.before()), MARK),
                words(retest.before(), "retest.before_run"),
                VerdictBlock.mark(verdict(retest.after()), MARK),
                words(retest.after(), "retest.after_run"));
    }

    private Tag words(RunRecord run, String key) {
        Tag words = Tag.of("div")
                .add(Tag.withText("b", VerdictBlock.word(verdict(run), texts)))
                .add(Tag.withText(
                        "p",
                        texts.say(
                                key,
                                FeatureWords.minute(run.startedAt()),
                                run.id(),
                                run.intake().attempt())));
        run.regradedFrom().ifPresent(from -> words.add(Tag.withText("p", texts.say("retest.regraded", from))));
        return words;
    }

    private static Verdict verdict(RunRecord run) {
        return run.grade().verdict();
    }

    private List<Tag> charts() {
        RetestChart flow = new RetestChart(Feature.Kind.FLOW, retest, words, texts);
        RetestChart amps = new RetestChart(Feature.Kind.MOTOR_AMPS, retest, words, texts);
        if (flow.isEmpty() || amps.isEmpty()) {
            return List.of(Blocks.words("small", texts.say("retest.no_sweep")));
        }
        return List.of(
                Blocks.beside("wide-left", flow.draw(FLOW_WIDTH, HEIGHT), amps.draw(AMPS_WIDTH, HEIGHT)),
                RetestChart.legend(retest.speaksOfTheUnit(), texts));
    }
}
