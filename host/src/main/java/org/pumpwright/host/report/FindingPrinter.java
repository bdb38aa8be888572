package org.pumpwright.host.report;

import java.util.Locale;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.text.Interpreter;

/**
 * Figures of findings for people: the expanded uncertainty to two digits, the value to the same place (JCGM 100, 7.2.6).
 * Thread-safe.
 */
public final class FindingPrinter {
    private static final int MOST_DECIMALS = 6;
    private static final int DECIMALS_WITHOUT_UNCERTAINTY = 3;

    /** Resistances below this are printed in thousandths. */
    private static final double SMALL_OHMS = 0.1;

    private final UnitSystem units;
    private final Interpreter in;

    /** Prints in the language that is spoken. */
    public FindingPrinter(UnitSystem units, Interpreter in) {
        this.units = units;
        this.in = in;
    }

    /** How a unit is shown: its name, and what a value of the SI unit is multiplied by. */
    private record Shown(String unit, double factor) {}

    /**
     * A finding as it is shown; for a word, uncertainty and unit are empty.
     *
     * @param value the figure, or the word
     * @param uncertainty expanded, k = 2
     * @param unit of both
     */
    public record Printed(String value, String uncertainty, String unit) {}

    /** The finding for people. */
    public Printed print(Finding finding) {
        if (finding.outcome() instanceof Finding.Figure figure) {
            return print(figure);
        }
        return new Printed(in.stored(((Finding.Word) finding.outcome()).word()), "", "");
    }

    private Printed print(Finding.Figure figure) {
        Shown shown = shown(figure);
        double value = figure.value().value() * shown.factor();
        double expanded = FeaturePrinter.COVERAGE_FACTOR * figure.value().standardUncertainty() * shown.factor();
        int place = place(expanded);
        return new Printed(rounded(value, place), rounded(expanded, place), in.stored(shown.unit()));
    }

    private Shown shown(Finding.Figure figure) {
        if (figure.unit() == FindingUnit.OHMS && Math.abs(figure.value().value()) < SMALL_OHMS) {
            return new Shown("mΩ", 1000);
        }
        ShownUnit shown = ShownUnit.of(figure.unit(), units);
        return new Shown(shown.words(), shown.factor());
    }

    /** Decimals that show two digits of the uncertainty; below 0 where these stand before the point. */
    private static int place(double expanded) {
        if (!(expanded > 0) || !Double.isFinite(expanded)) {
            return DECIMALS_WITHOUT_UNCERTAINTY;
        }
        int place = 1 - (int) Math.floor(Math.log10(expanded));
        return Math.min(MOST_DECIMALS, place);
    }

    private String rounded(double value, int place) {
        if (!Double.isFinite(value)) {
            return in.say("feature.not_known");
        }
        double tens = Math.pow(10, Math.max(0, -place));
        double whole = place < 0 ? Math.rint(value / tens) * tens : value;
        String printed = String.format(Locale.ROOT, "%." + Math.max(0, place) + "f", whole);
        boolean zero = printed.chars().noneMatch(c -> c >= '1' && c <= '9');
        return zero && printed.startsWith("-") ? printed.substring(1) : printed;
    }
}
