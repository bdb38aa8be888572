package org.pumpwright.host.grade;

import java.util.Locale;
import org.pumpwright.host.grade.FeatureJudgement.Decision;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;

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
                start + format(", at least %s needed (%s)", bare(f, f.limits().low()), percent(f.deviation()));
            case HIGH ->
                start + format(", at most %s allowed (%s)", bare(f, f.limits().high()), percent(f.deviation()));
            case NEAR_LOW, NEAR_HIGH ->
                start
                        + format(
                                ", too close to the limit %s to tell (within %s)",
                                bare(f, nearLimit(f)), bare(f, f.guard()));
            case INSIDE ->
                start
                        + format(
                                ", %s to %s",
                                bare(f, f.limits().low()), bare(f, f.limits().high()));
        };
    }

    private static double nearLimit(FeatureJudgement f) {
        return f.decision() == Decision.NEAR_LOW ? f.limits().low() : f.limits().high();
    }

    /** A deviation, e.g. {@code -27 %}. */
    static String percent(double share) {
        long percent = Math.round(share * 100);
        return percent == 0 ? "0 %" : format("%+d %%", percent);
    }

    private String value(FeatureJudgement f, double si) {
        return switch (f.feature().quantity()) {
            case FLOW -> new FlowRate(si).print(units);
            case MOTOR_AMPS -> format("%.1f A", si);
        };
    }

    private String bare(FeatureJudgement f, double si) {
        String whole = value(f, si);
        return whole.substring(0, whole.indexOf(' '));
    }
}
