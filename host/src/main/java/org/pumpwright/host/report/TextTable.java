package org.pumpwright.host.report;

import java.util.List;
import java.util.Locale;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.text.Interpreter;

/** The judged features as lines of text, each with a strip that shows where it lies. Confined to one thread. */
final class TextTable {
    private final TextPage page;
    private final UnitSystem units;
    private final FeaturePrinter printer;
    private final Interpreter in;
    private final Words words;

    TextTable(TextPage page, UnitSystem units, Interpreter in) {
        this.in = in;
        words = new Words(in);
        this.page = page;
        this.units = units;
        this.printer = new FeaturePrinter(units, in);
    }

    void add(RunRecord run) {
        Verdict verdict = run.grade().verdict();
        List<FeatureJudgement> judged =
                run.grade().points().stream().filter(FeatureJudgement::judged).toList();
        boolean withoutPoints = PlainReading.of(run).isEmpty();
        if (judged.isEmpty() && withoutPoints && !run.grade().findings().isEmpty()) {
            // A plan without a sweep has no points; what its steps read stands in a table of its own.
            return;
        }
        page.blank();
        if (judged.isEmpty() || !Words.speaksOfTheUnit(verdict)) {
            addReadings(run);
            return;
        }
        page.line(row("", "measured", "healthy", "from mean, %", ""));
        judged.forEach(feature -> page.line(figures(feature, verdict)));
        page.blank();
        judged.forEach(feature -> page.line(strip(feature.feature().words(), Strip.of(feature))));
        page.line(strip("", Strip.LEGEND));
    }

    private String figures(FeatureJudgement feature, Verdict verdict) {
        return row(
                feature.feature().words(),
                printer.measured(feature),
                printer.limits(feature),
                printer.fromMean(feature, "+-"),
                printer.decision(feature, verdict));
    }

    private static String row(String feature, String measured, String healthy, String deviation, String decision) {
        return String.format(
                Locale.ROOT, "%-19s %12s  %-14s %-15s  %s", feature, measured, healthy, deviation, decision);
    }

    private static String strip(String feature, String strip) {
        return String.format(Locale.ROOT, "%-19s %s", feature, strip);
    }

    private void addReadings(RunRecord run) {
        List<PlainReading> readings = PlainReading.of(run);
        if (readings.isEmpty()) {
            page.line(in.say("readings.none"));
            return;
        }
        page.line("Plain readings; nothing was judged on them");
        page.line(reading("", "drive", "flow", "at the pins", "supply", "outlet"));
        readings.forEach(this::addReading);
    }

    private void addReading(PlainReading reading) {
        page.line(reading(
                words.leg(reading.point().leg()),
                reading.point().commanded().print(),
                printer.flow(reading.flowM3PerSecond()),
                reading.voltsWords(in),
                reading.ampsWords(in),
                reading.pressureWords(units, in)));
        String flaws = words.flaws(reading.point());
        if (!flaws.isEmpty()) {
            page.line(" ".repeat(9) + flaws.substring(2));
        }
    }

    private static String reading(String leg, String drive, String flow, String volts, String amps, String pressure) {
        return String.format(Locale.ROOT, "  %-6s %6s %13s %13s %13s %13s", leg, drive, flow, volts, amps, pressure);
    }
}
