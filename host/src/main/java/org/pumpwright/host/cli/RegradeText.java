package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Regrading;
import org.pumpwright.host.app.Regrading.Outcome;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecord.CurveUsed;
import org.pumpwright.host.report.TextReport;
import org.pumpwright.host.run.StopButton;

/**
 * Tells stored runs that are judged again in a terminal of 80 columns: a line for each whose verdict changed or that could
 * not be judged, and a line of progress that is written over. Confined to the thread that has it done.
 */
final class RegradeText implements RegradeFace {
    private static final double MILLIS = 1e3;
    /** The line of progress is for eyes: more often is only work. */
    private static final long MILLIS_BETWEEN = 250;

    private final PrintWriter out;
    private final StopButton stop;
    private final boolean live;
    private final Regrading.Order order;
    private final Path into;
    private final boolean numbers;
    private final Clock clock;
    private final long begun;
    private int files;
    private int done;
    private int changed;
    private long shownAt;

    /**
     * Tells it.
     *
     * @param stop pressed when nobody can see it any more
     * @param live whether the line of progress is shown; it needs a terminal
     * @param into where the new records are kept
     * @param clock tells how long it has taken
     * @param numbers whether the page of a single run has the numbers behind the verdict
     */
    RegradeText(
            PrintWriter out,
            StopButton stop,
            boolean live,
            Regrading.Order order,
            Path into,
            boolean numbers,
            Clock clock) {
        this.clock = clock;
        begun = clock.millis();
        shownAt = begun;
        this.out = out;
        this.stop = stop;
        this.live = live;
        this.order = order;
        this.into = into;
        this.numbers = numbers;
    }

    @Override
    public void begins(int found) {
        files = found;
        String by = order.curve().map(curve -> "curve " + curve).orElse("the newest curve that fits each run")
                + order.rules().map(rules -> " and rules " + rules).orElse("");
        out.println(found + (found == 1 ? " record, " : " records, ") + order.threads() + " at once, held against " + by
                + ".");
    }

    @Override
    public void done(Outcome outcome) {
        done++;
        if (outcome instanceof Outcome.Judged judged) {
            judged(judged);
        } else if (outcome instanceof Outcome.NotJudged not) {
            say("NOT GRADED  " + not.file() + ": " + not.why());
        } else if (outcome instanceof Outcome.PassedOver over && files == 1) {
            say("Passed over  " + over.file() + ": " + over.why() + ".");
        }
        progress();
        if (out.checkError()) {
            stop.press("the terminal was closed");
        }
    }

    private void judged(Outcome.Judged judged) {
        if (judged.changed()) {
            changed++;
        }
        if (files == 1) {
            page(judged);
        } else if (judged.changed()) {
            say("%s  serial %s  %s"
                    .formatted(judged.runId(), judged.record().subject().serial(), change(judged)));
            say("  " + WrappedText.of(judged.record().grade().reasons().get(0), 4));
        }
        if (judged.ofTheCurvesOwn()) {
            say(WrappedText.of(
                    "! " + judged.runId() + " is one of the runs that curve " + curve(judged.record())
                            + " was made from: this verdict proves nothing",
                    2));
        }
        judged.kept().flatMap(RecordFolder.Kept::trouble).ifPresent(trouble -> say("CAUTION  " + trouble));
    }

    private void page(Outcome.Judged judged) {
        out.println();
        out.print(TextReport.page(judged.record(), order.units(), numbers));
        out.println();
        out.println("Graded again   " + judged.runId() + ": " + change(judged));
        judged.kept().ifPresent(kept -> {
            out.println("Page to print  " + kept.page());
            out.println("Record         " + kept.record());
        });
    }

    private static String curve(RunRecord record) {
        return record.curve().map(CurveUsed::label).orElse("");
    }

    private static String change(Outcome.Judged judged) {
        String now = words(judged.record().grade().verdict());
        return judged.changed() ? words(judged.before()) + " -> " + now : now + " as before";
    }

    private static String words(Verdict verdict) {
        return verdict.name().replace('_', ' ');
    }

    @Override
    public void over(RegradeTally tally, Optional<String> stopped) {
        erase();
        out.println();
        out.println(String.format(
                Locale.ROOT,
                "%d graded%s: %d as before, %d changed.",
                tally.judged(),
                order.dryRun() ? " on trial" : " again",
                tally.judged() - tally.changed(),
                tally.changed()));
        tally.changes()
                .forEach((change, count) -> out.println(String.format(
                        Locale.ROOT, "  %-12s -> %-12s %6d", words(change.from()), words(change.to()), count)));
        told(tally.notJudged(), "could not be graded; why stands above, and nothing was changed");
        told(
                tally.passedOver(),
                "passed over: already a grading of another record, the same run twice, or driven by hand");
        told(tally.ofTheCurvesOwn(), "of the runs that the curve was made from: their verdicts prove nothing");
        told(tally.troubles(), "without all papers; what to do stands above");
        stopped.ifPresent(why -> out.println(WrappedText.of(
                "Stopped, because " + why + ": " + (tally.judged() + tally.notJudged() + tally.passedOver()) + " of "
                        + tally.files() + " records had their turn.",
                2)));
        if (order.dryRun()) {
            out.println("Nothing was written: this was a dry run.");
        } else if (tally.judged() > 0) {
            out.println("New records are in " + into + "; the old ones are as they were.");
        }
    }

    private void told(int count, String words) {
        if (count > 0) {
            out.println(WrappedText.of(count + " " + words + ".", 2));
        }
    }

    /** Not wrapped by itself: some lines hold names of files, which are to be copied whole. */
    private void say(String words) {
        erase();
        out.println(words);
    }

    private void progress() {
        long now = clock.millis();
        if (!live || files == 1 || now - shownAt < MILLIS_BETWEEN) {
            return;
        }
        shownAt = now;
        double seconds = (now - begun) / MILLIS;
        double left = seconds / done * (files - done);
        out.print("\r"
                + pad(String.format(
                        Locale.ROOT,
                        "%d of %d graded, %d changed, %.0f a second, %d:%02d left",
                        done,
                        files,
                        changed,
                        done / seconds,
                        (long) left / 60,
                        (long) left % 60))
                + "\r");
        out.flush();
    }

    private void erase() {
        if (live) {
            out.print("\r" + pad("") + "\r");
        }
    }

    private static String pad(String text) {
        return text + " ".repeat(Math.max(0, WrappedText.COLUMNS - text.length()));
    }
}
