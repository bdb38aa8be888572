package org.pumpwright.host.report.retest;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.Blocks;
import org.pumpwright.host.text.Texts;

/**
 * One thing that should be the same in both runs. Thread-safe.
 *
 * @param name what
 * @param before in the earlier run
 * @param after in the later run
 */
record ConditionRow(String name, String before, String after) {
    /** The drive's frequency as it is read back differs by less than this share from run to run. */
    private static final double FREQUENCY_SHARE = 0.05;

    boolean same() {
        return before.equals(after);
    }

    static List<ConditionRow> of(Retest retest, Texts texts) {
        RunRecord before = retest.before();
        RunRecord after = retest.after();
        return List.of(
                new ConditionRow(texts.say("retest.stand"), stand(before), stand(after)),
                new ConditionRow(
                        texts.say("retest.nozzle"),
                        before.conditions().nozzle(),
                        after.conditions().nozzle()),
                new ConditionRow(
                        texts.say("retest.fluid"),
                        before.conditions().fluid(),
                        after.conditions().fluid()),
                new ConditionRow(
                        texts.say("retest.driver"),
                        driver(before, before.conditions().pwmHz()),
                        driver(after, likelyTheSame(before, after))),
                new ConditionRow(texts.say("retest.plan"), before.plan(), after.plan()),
                new ConditionRow(texts.say("retest.curve"), curve(before, texts), curve(after, texts)),
                new ConditionRow(
                        texts.say("retest.rules"),
                        before.rules().orElse(texts.say("sheet.none")),
                        after.rules().orElse(texts.say("sheet.none"))));
    }

    private static String stand(RunRecord run) {
        return run.stand().title() + " (" + run.stand().id() + ")";
    }

    private static double likelyTheSame(RunRecord before, RunRecord after) {
        double was = before.conditions().pwmHz();
        double is = after.conditions().pwmHz();
        return Math.abs(is - was) <= FREQUENCY_SHARE * was ? was : is;
    }

    private static String driver(RunRecord run, double hertz) {
        return String.format(Locale.ROOT, "%s, %.0f Hz", run.conditions().driver(), hertz);
    }

    private static String curve(RunRecord run, Texts texts) {
        return run.curve().map(RunRecord.CurveUsed::label).orElse(texts.say("sheet.none"));
    }

    /** What was the same in both runs and what was not, as a table with a sentence. */
    static List<Tag> compared(Retest retest, Texts texts) {
        List<ConditionRow> rows = of(retest, texts);
        List<String> different =
                rows.stream().filter(row -> !row.same()).map(ConditionRow::name).toList();
        Tag body = Tag.of("tbody");
        for (ConditionRow row : rows) {
            body.add(Tag.of("tr")
                    .add(
                            Blocks.cell("words strong", row.name()),
                            Blocks.cell("words", row.before()),
                            Blocks.cell("words" + (row.same() ? "" : " boxed"), row.same() ? "=" : row.after()),
                            Blocks.cell(
                                    "strong figure-cell", texts.say(row.same() ? "retest.same" : "retest.different"))));
        }
        List<String> head = List.of(
                texts.say("retest.column.condition"),
                texts.say("retest.before"),
                texts.say("retest.after"),
                texts.say("retest.column.compared"));
        List<Tag> blocks = new ArrayList<>();
        blocks.add(Blocks.table(3, head, body));
        blocks.add(
                different.isEmpty()
                        ? Blocks.words("small", texts.say("retest.all_same"))
                        : Blocks.words("notice", texts.say("retest.differences", String.join(", ", different))));
        return blocks;
    }
}
