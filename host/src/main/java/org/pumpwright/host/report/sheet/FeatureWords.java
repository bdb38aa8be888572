package org.pumpwright.host.report.sheet;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.report.FeaturePrinter;
import org.pumpwright.host.report.FindingPrinter;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Interpreter;
import org.pumpwright.host.text.Texts;

/** Features, figures and times as these papers print them, in one language and one system of units. Thread-safe. */
public final class FeatureWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private final Texts texts;
    private final Interpreter interpreter;
    private final FeaturePrinter printer;
    private final FindingPrinter rounding;

    public FeatureWords(UnitSystem units, Texts texts) {
        this.texts = texts;
        this.interpreter = new Interpreter(texts);
        this.printer = new FeaturePrinter(units, interpreter);
        this.rounding = new FindingPrinter(units, interpreter);
    }

    /** What was judged, e.g. {@code flow at 50 %}. */
    public String name(Feature feature) {
        return switch (feature.quantity()) {
            case FLOW -> texts.say("sheet.flow_at", unbroken(feature));
            case MOTOR_AMPS -> texts.say("sheet.motor_amps_at", unbroken(feature));
            case READING -> reading(feature.words());
        };
    }

    private static String unbroken(Feature feature) {
        return feature.duty().print().replace(' ', '\u00A0');
    }

    /** What a step has read, in the language where there are words for it. */
    public String reading(String name) {
        return interpreter.stored(name);
    }

    /** A sentence of a record, in the language where there are words for it. */
    public String stored(String english) {
        return interpreter.stored(english);
    }

    /** A line that says so, where words of a record were left in English on a page in another language; to be asked for last. */
    public List<Tag> leftInEnglish() {
        return interpreter.leftInEnglish().isEmpty()
                ? List.of()
                : List.of(Blocks.words("small", texts.say("sheet.left_in_english")));
    }

    /** A value with its unit. */
    public String value(FindingUnit unit, double si) {
        String words = printer.unit(unit);
        return words.isEmpty() ? printer.number(unit, si) : printer.number(unit, si) + " " + words;
    }

    /**
     * A value with its expanded uncertainty, k = 2: the uncertainty to two digits, the value to the same place.
     *
     * @param value as printed
     * @param uncertainty as printed
     */
    public record Rounded(String value, String uncertainty) {}

    /** A value and its uncertainty with their unit, rounded to belong to each other. */
    public Rounded rounded(FindingUnit unit, Uncertain value) {
        FindingPrinter.Printed printed = rounding.print(new Finding("", "", new Finding.Figure(value, unit), ""));
        String words = printed.unit().isEmpty() ? "" : " " + printed.unit();
        return new Rounded(printed.value() + words, printed.uncertainty() + words);
    }

    /** The limits without their unit; an open side is told. */
    public String limits(FeatureJudgement judged) {
        return printer.limits(judged);
    }

    /** A value without its unit. */
    public String number(FindingUnit unit, double si) {
        return printer.number(unit, si);
    }

    /** The unit that values are shown in. */
    public String unit(FindingUnit unit) {
        return printer.unit(unit);
    }

    /** A value of a point of a sweep in the unit that is shown. */
    public double shown(Feature.Kind kind, double si) {
        return printer.shown(kind, si);
    }

    /** What the comparison with the limits came to in a run with this verdict, in a word or two. */
    public String decision(FeatureJudgement judged, Verdict verdict) {
        return printer.decision(judged, verdict);
    }

    /** A share as percent with its sign. */
    public static String signedPercent(double share) {
        String printed = String.format(Locale.ROOT, "%+.1f %%", 100 * share);
        return printed.startsWith("-0.0 ") ? "+" + printed.substring(1) : printed;
    }

    /** A share as percent. */
    public static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }

    /** The day alone. */
    public static String day(OffsetDateTime time) {
        return DAY.format(time);
    }

    /** Day and time in the shop. */
    public static String minute(OffsetDateTime time) {
        return MINUTE.format(time);
    }
}
