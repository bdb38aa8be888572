package org.pumpwright.host.grade;

import java.util.Locale;
import org.pumpwright.host.grade.FeatureJudgement.Decision;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.quantity.Volume;

/** The figures of a grade in plain shop words, in one system of units. Thread-safe. */
record Phrases(UnitSystem units) {

    /** Formats with a decimal point, whatever the machine's language. */
    static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    /** A judged feature that lies outside or near a limit. */
    String reason(FeatureJudgement f) {
        String start = f.feature().words() + ": " + value(f, f.measured().value());
        return switch (f.decision()) {
            case LOW ->
                start + format(", at least %s needed%s", bare(f, f.limits().low()), beyond(f));
            case HIGH ->
                start + format(", at most %s allowed%s", bare(f, f.limits().high()), beyond(f));
            case NEAR_LOW, NEAR_HIGH ->
                start
                        + format(
                                ", too close to the limit %s to tell (within %s)",
                                bare(f, nearLimit(f)), bare(f, f.guard().width()));
            case INSIDE -> start + ", inside its limits";
        };
    }

    private static String beyond(FeatureJudgement f) {
        String deviation = f.limits().centre().isPresent() ? format(" (%s)", percent(f.deviation())) : "";
        return deviation
                + (f.limits().meaning().isEmpty() ? "" : ": " + f.limits().meaning());
    }

    private static double nearLimit(FeatureJudgement f) {
        return f.decision() == Decision.NEAR_LOW ? f.limits().low() : f.limits().high();
    }

    /** A deviation, e.g. {@code -27 %}. */
    static String percent(double share) {
        long percent = Math.round(share * 100);
        return percent == 0 ? "0 %" : format("%+d %%", percent);
    }

    /** A value with its unit, in the units that people here read. */
    String value(FeatureJudgement f, double si) {
        return switch (f.feature().unit()) {
            case M3_PER_SECOND -> new FlowRate(si).print(units);
            case AMPS -> format("%.1f A", si);
            case PASCALS -> new Pressure(si).print(units);
            case SHARE -> format("%.1f %%", si * 100);
            case SECONDS -> format("%.1f s", si);
            case VOLTS -> format("%.2f V", si);
            case OHMS -> Math.abs(si) < 1 ? format("%.1f mohm", si * 1000) : format("%.2f ohm", si);
            case CELSIUS -> format("%.1f degC", si);
            case HERTZ -> format("%.2f Hz", si);
            case NUMBER -> format("%.3f", si);
            case PULSES_PER_M3 ->
                units == UnitSystem.US
                        ? format("%.1f pulses/gal", si * Volume.M3_PER_US_GALLON)
                        : format("%.2f pulses/L", si / 1000);
            case M3_PER_SECOND_PER_VOLT -> new FlowRate(si).print(units) + " per volt";
            case AMPS_PER_PASCAL -> format("%.3f A per psi", si * Pressure.PASCALS_PER_PSI);
            case M3_PER_SECOND_PER_PASCAL -> new FlowRate(si * Pressure.PASCALS_PER_PSI).print(units) + " per psi";
        };
    }

    private String bare(FeatureJudgement f, double si) {
        String whole = value(f, si);
        int space = whole.indexOf(' ');
        return space < 0 ? whole : whole.substring(0, space);
    }
}
