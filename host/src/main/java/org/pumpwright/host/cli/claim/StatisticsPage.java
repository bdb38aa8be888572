package org.pumpwright.host.cli.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.pumpwright.host.app.claim.StatisticsDesk.Question;
import org.pumpwright.host.claim.statistics.Middle;
import org.pumpwright.host.claim.statistics.ModeCount;
import org.pumpwright.host.claim.statistics.ReturnCounts;
import org.pumpwright.host.claim.statistics.ReturnStatistics;
import org.pumpwright.host.claim.statistics.ShopFigures;
import org.pumpwright.host.cli.WrappedText;

/** Statistics of returns for the terminal. Confined to one thread. */
final class StatisticsPage {
    private static final int SET_IN = 16;

    private final List<String> lines = new ArrayList<>();

    private StatisticsPage() {}

    static List<String> lines(Question question, ReturnStatistics statistics) {
        StatisticsPage page = new StatisticsPage();
        page.head(question, statistics.practice());
        page.counts(statistics.counts());
        statistics.modes().forEach(page::mode);
        page.shop(statistics.shop());
        statistics
                .fleet()
                .ifPresentOrElse(
                        fleet -> page.lines.addAll(StatisticsFleetPage.lines(fleet)),
                        () -> page.line(
                                "Lives, batches",
                                "not worked out: that needs what was shipped (--shipped), as the units that never came back count too"));
        return page.lines;
    }

    /** A title and its words; further lines set in below the words. */
    static String titled(String title, String words) {
        String text = WrappedText.of(".".repeat(SET_IN - 1) + " " + words, SET_IN);
        return String.format(Locale.ROOT, "%-" + (SET_IN - 1) + "s", title) + text.substring(SET_IN - 1);
    }

    private void line(String title, String words) {
        lines.add(titled(title, words));
    }

    private void head(Question question, boolean practice) {
        if (practice || question.practice()) {
            lines.add("PRACTICE - simulated or invented units, says nothing of real ones");
        }
        lines.add("Returns of %s, %suntil %s. Intervals: 95 %%."
                .formatted(
                        question.model().orElse("all models together"),
                        question.from().map(day -> "from " + day + " ").orElse(""),
                        question.until()));
        lines.add("");
    }

    private void counts(ReturnCounts counts) {
        line(
                "Came in",
                "%d, of these %d concluded and %d open".formatted(counts.returns(), counts.concluded(), counts.open()));
        counts.confirmedShare()
                .ifPresent(share -> line("Confirmed", StatisticsWords.share(share, " concluded are outside limits")));
        counts.noFaultFoundShare()
                .ifPresent(share -> line(
                        "No fault found",
                        StatisticsWords.share(share, " concluded")
                                + ". A class to explain, no proof that nothing was wrong"));
        line(
                "Not certain",
                "%d inconclusive, %d not testable as received".formatted(counts.inconclusive(), counts.notTestable()));
    }

    private void mode(ModeCount count) {
        line(
                "Failure",
                count.mode().orElse("mode not determined") + ", " + StatisticsWords.share(count.share(), " confirmed"));
    }

    private void shop(ShopFigures shop) {
        lines.add("");
        line(
                "Repeats",
                shop.repeats()
                        .map(share -> StatisticsWords.share(
                                share, " handed back came again within %d days".formatted(ShopFigures.REPEAT_DAYS)))
                        .orElse("no unit with a serial was handed back %d days ago or longer"
                                .formatted(ShopFigures.REPEAT_DAYS)));
        line(
                "Turnaround",
                shop.turnaroundDays().map(days -> middle(days, "days")).orElse("no unit was handed back yet"));
        line(
                "Work",
                shop.touchMinutes()
                        .map(minutes -> middle(minutes, "minutes"))
                        .orElse("minutes are not kept with these claims"));
        line(
                "Open claims",
                shop.oldestOpenDays().isPresent()
                        ? "%d, the oldest %d days"
                                .formatted(shop.open(), shop.oldestOpenDays().getAsInt())
                        : "none");
    }

    private static String middle(Middle middle, String unit) {
        return "half took %s %s or less; %s to %s (%s)"
                .formatted(
                        StatisticsWords.plain(middle.median()),
                        unit,
                        StatisticsWords.plain(middle.least()),
                        StatisticsWords.plain(middle.greatest()),
                        StatisticsWords.count(middle.count(), "unit", "units"));
    }

    static String months(List<Double> ages) {
        return ages.stream()
                .map(age -> age < 1 ? "under 1" : StatisticsWords.plain(age))
                .collect(Collectors.joining(", "));
    }
}
