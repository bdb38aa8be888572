package org.pumpwright.host.cli.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.claim.statistics.BatchFinding;
import org.pumpwright.host.claim.statistics.BatchWatch;
import org.pumpwright.host.claim.statistics.FleetFindings;
import org.pumpwright.host.claim.statistics.Interval;
import org.pumpwright.host.claim.statistics.ModeLife;
import org.pumpwright.host.claim.statistics.ServiceRow;
import org.pumpwright.host.claim.statistics.Share;
import org.pumpwright.host.claim.statistics.WeibullFit;

/** What shipped against returned teaches, for the terminal. Confined to one thread. */
final class StatisticsFleetPage {
    private final List<String> lines = new ArrayList<>();

    private StatisticsFleetPage() {}

    static List<String> lines(FleetFindings fleet) {
        StatisticsFleetPage page = new StatisticsFleetPage();
        page.service(fleet);
        page.lines.add("");
        if (fleet.modes().isEmpty()) {
            page.line("Life", "no confirmed failure among what was shipped");
        }
        fleet.modes().forEach(page::life);
        page.lines.add("");
        page.batches(fleet.batches());
        return page.lines;
    }

    private void line(String title, String words) {
        lines.add(StatisticsPage.titled(title, words));
    }

    private void service(FleetFindings fleet) {
        lines.add("");
        lines.add("Months in service: returned, and confirmed of these in brackets");
        fleet.rows().forEach(this::row);
        if (fleet.shipped() > 0) {
            line(
                    "Together",
                    StatisticsWords.share(new Share(fleet.failed(), fleet.shipped()), " shipped have failed so far"));
        }
        fleet.unplaced().forEach(words -> line("Left out", words));
    }

    private void row(ServiceRow row) {
        StringBuilder words = new StringBuilder(String.format(Locale.ROOT, "%d shipped", row.shipped()));
        if (!row.batch().equals(row.shippedIn().toString())) {
            words.append(" in ").append(row.shippedIn());
        }
        for (int month = 0; month < row.returned().size(); month++) {
            if (row.returned().get(month) + row.confirmed().get(month) > 0) {
                words.append(String.format(
                        Locale.ROOT,
                        "; month %d: %d (%d)",
                        month,
                        row.returned().get(month),
                        row.confirmed().get(month)));
            }
        }
        words.append("; ").append(row.stillServing()).append(" still serve");
        line(row.batch(), words.toString());
    }

    private void life(ModeLife life) {
        String counts = "%s, %s"
                .formatted(
                        StatisticsWords.count(life.failureMonths().size(), "failure", "failures"),
                        StatisticsWords.count(life.suspensions(), "suspension", "suspensions"));
        line("Life", life.mode().orElse("mode not determined") + ": " + counts);
        if (life instanceof ModeLife.Listed listed) {
            line("", listed.reason());
            line("", "months at failure: " + StatisticsPage.months(listed.failureMonths()));
        }
        if (life instanceof ModeLife.Fitted fitted) {
            fit(fitted.fit(), fitted.watchedMonths());
        }
    }

    private void fit(WeibullFit fit, double watched) {
        line("", "shape " + StatisticsWords.estimate(fit.beta(), fit.betaInterval()) + ": " + kind(fit.betaInterval()));
        line("", age("10 %", fit.b10(), fit.b10Interval(), watched));
        line("", age("63 %", fit.eta(), fit.etaInterval(), watched));
    }

    private static String age(String part, double value, Interval interval, double watched) {
        return "%s fail of it by %s months%s"
                .formatted(
                        part,
                        StatisticsWords.estimate(value, interval),
                        value > watched
                                ? ", carried on beyond the %s months watched: nobody has seen it"
                                        .formatted(StatisticsWords.figure(watched))
                                : "");
    }

    /** What the shape says, in words; nothing where the interval holds 1. */
    static String kind(Interval beta) {
        if (beta.high() < 1) {
            return "early life";
        }
        return beta.low() > 1 ? "wear" : "cannot be told from failing at random";
    }

    private void batches(BatchWatch watch) {
        if (watch.findings().isEmpty()) {
            line("Batches", "only one: nothing to compare it with");
            return;
        }
        line(
                "Batches",
                "%d looked at; at %s %% chance alone gives up to %s false alerts"
                        .formatted(
                                watch.findings().size(),
                                StatisticsWords.percent(watch.alertBelow()),
                                StatisticsWords.figure(watch.expectedFalseAlerts())));
        if (watch.alerts().isEmpty()) {
            line("", "no alert. This does not prove that all batches are alike");
        }
        watch.alerts().forEach(this::alert);
    }

    private void alert(BatchFinding batch) {
        line(
                "ALERT",
                "%s: %d of %d failed, %s expected by the rest at the same ages; by chance %s. Look for a common cause"
                        .formatted(
                                batch.batch(),
                                batch.failures(),
                                batch.shipped(),
                                StatisticsWords.figure(batch.expected()),
                                batch.chance() < 0.001
                                        ? "less than once in 1000"
                                        : StatisticsWords.percent(batch.chance()) + " %"));
    }
}
