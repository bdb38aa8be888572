package org.pumpwright.host.report;

import java.util.Locale;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;

/**
 * The one place where features become words and figures, the same on every paper and in every language of the machine.
 * Thread-safe.
 */
public final class FeaturePrinter {
    /** The expanded uncertainty is this many standard uncertainties (JCGM 100, 6.2.1), which is about 95 % coverage. */
    public static final double COVERAGE_FACTOR = 2;

    private static final String NOT_KNOWN = "not known";

    private final UnitSystem units;

    public FeaturePrinter(UnitSystem units) {
        this.units = units;
    }

    /** The unit that a quantity is shown in. */
    public String unit(Feature.Kind kind) {
        return switch (kind) {
            case FLOW ->
                switch (units) {
                    case US -> "gal/min";
                    case METRIC -> "L/min";
                };
            case MOTOR_AMPS -> "A";
        };
    }

    /** A value of the quantity's SI unit in the unit that is shown. */
    public double shown(Feature.Kind kind, double si) {
        return switch (kind) {
            case FLOW ->
                switch (units) {
                    case US -> new FlowRate(si).gallonsPerMinute();
                    case METRIC -> new FlowRate(si).litresPerMinute();
                };
            case MOTOR_AMPS -> si;
        };
    }

    /** The value without its unit, to a hundredth. */
    public String number(Feature.Kind kind, double si) {
        return Double.isFinite(si) ? fixed("%.2f", shown(kind, si)) : NOT_KNOWN;
    }

    /** The measured value with its unit, e.g. {@code 1.49 gal/min}. */
    public String measured(FeatureJudgement judged) {
        Feature.Kind kind = judged.feature().quantity();
        return number(kind, judged.measured().value()) + " " + unit(kind);
    }

    /** A flow with its unit. */
    String flow(double m3PerSecond) {
        return number(Feature.Kind.FLOW, m3PerSecond) + " " + unit(Feature.Kind.FLOW);
    }

    /** Volts to a hundredth, without the unit. */
    public String volts(double volts) {
        return Double.isFinite(volts) ? fixed("%.2f", volts) : NOT_KNOWN;
    }

    /** The healthy range without its unit, e.g. {@code 1.91 to 2.21}. */
    public String limits(FeatureJudgement judged) {
        Feature.Kind kind = judged.feature().quantity();
        return number(kind, judged.limits().low()) + " to "
                + number(kind, judged.limits().high());
    }

    /** Deviation from the healthy mean in percent, signed, without the sign of percent. */
    public String deviation(FeatureJudgement judged) {
        return Double.isFinite(judged.deviation()) ? fixed("%+.1f", judged.deviation() * 100) : NOT_KNOWN;
    }

    /** Expanded uncertainty of the deviation in percent, without the sign of percent. */
    public String expandedUncertainty(FeatureJudgement judged) {
        double share = COVERAGE_FACTOR
                * judged.measured().standardUncertainty()
                / Math.abs(judged.limits().centre());
        return Double.isFinite(share) ? fixed("%.1f", share * 100) : NOT_KNOWN;
    }

    /** The decision in a word or two; in brackets where it is for information only. */
    public String decision(FeatureJudgement judged, Verdict verdict) {
        if (verdict == Verdict.INVALID || verdict == Verdict.NOT_TESTED) {
            return "not judged";
        }
        if (judged.judged()) {
            return switch (judged.decision()) {
                case INSIDE -> "pass";
                case LOW -> "FAIL low";
                case HIGH -> "FAIL high";
                case NEAR_LOW -> "near low";
                case NEAR_HIGH -> "near high";
            };
        }
        return switch (judged.decision()) {
            case INSIDE -> "(inside)";
            case LOW -> "(low)";
            case HIGH -> "(high)";
            case NEAR_LOW -> "(near low)";
            case NEAR_HIGH -> "(near high)";
        };
    }

    /** Never prints a zero with a minus sign. */
    private static String fixed(String format, double value) {
        String printed = String.format(Locale.ROOT, format, value);
        boolean zero = printed.chars().noneMatch(c -> c >= '1' && c <= '9');
        return zero && printed.startsWith("-") ? String.format(Locale.ROOT, format, 0.0) : printed;
    }
}
