package org.pumpwright.host.report;

import java.util.Locale;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.text.Interpreter;

/**
 * The one place where features become words and figures, the same on every paper and in every language of the machine.
 * Thread-safe.
 */
public final class FeaturePrinter {
    /** The expanded uncertainty is this many standard uncertainties (JCGM 100, 6.2.1), which is about 95 % coverage. */
    public static final double COVERAGE_FACTOR = 2;

    private static final int MOST_MORE_PLACES = 3;
    private final UnitSystem units;
    private final Interpreter in;

    /** In English. */
    public FeaturePrinter(UnitSystem units) {
        this(units, Interpreter.english());
    }

    public FeaturePrinter(UnitSystem units, Interpreter in) {
        this.units = units;
        this.in = in;
    }

    /** The unit that a quantity of a sweep's points is shown in. */
    public String unit(Feature.Kind kind) {
        return unit(unitOf(kind));
    }

    /** The unit that a value is shown in. */
    public String unit(FindingUnit unit) {
        return in.stored(ShownUnit.of(unit, units).words());
    }

    /** A value of the quantity's SI unit in the unit that is shown. */
    public double shown(Feature.Kind kind, double si) {
        return si * ShownUnit.of(unitOf(kind), units).factor();
    }

    /** The value without its unit, to a hundredth. */
    public String number(Feature.Kind kind, double si) {
        return number(unitOf(kind), si);
    }

    /** The value without its unit, to as many places as the unit bears. */
    public String number(FindingUnit unit, double si) {
        ShownUnit shown = ShownUnit.of(unit, units);
        return Double.isFinite(si)
                ? fixed("%." + shown.decimals() + "f", si * shown.factor())
                : in.say("feature.not_known");
    }

    /** The value without its unit, to two places more. */
    String fine(FindingUnit unit, double si) {
        ShownUnit shown = ShownUnit.of(unit, units);
        return Double.isFinite(si)
                ? fixed("%." + (shown.decimals() + 2) + "f", si * shown.factor())
                : in.say("feature.not_known");
    }

    /** The measured value and its expanded uncertainty, without their unit. */
    String withUncertainty(FeatureJudgement judged, String sign) {
        return number(judged, judged.measured().value()) + " " + sign + " "
                + number(judged, COVERAGE_FACTOR * judged.measured().standardUncertainty());
    }

    /** A value of a feature: a reading to as many places as its uncertainty asks for, at most three more than usual. */
    private String number(FeatureJudgement judged, double si) {
        ShownUnit shown = ShownUnit.of(judged.feature().unit(), units);
        if (judged.feature().quantity() != Feature.Kind.READING || !Double.isFinite(si)) {
            return number(judged.feature().unit(), si);
        }
        double expanded = COVERAGE_FACTOR * judged.measured().standardUncertainty() * shown.factor();
        int places = shown.decimals();
        while (places < shown.decimals() + MOST_MORE_PLACES
                && expanded > 0
                && expanded < 0.95 * StrictMath.pow(10, -places)) {
            places++;
        }
        return fixed("%." + places + "f", si * shown.factor());
    }

    private static FindingUnit unitOf(Feature.Kind kind) {
        return switch (kind) {
            case FLOW -> FindingUnit.M3_PER_SECOND;
            case MOTOR_AMPS -> FindingUnit.AMPS;
            case READING -> throw new IllegalArgumentException("a reading has no unit of its kind");
        };
    }

    /** The measured value with its unit, e.g. {@code 1.49 gal/min}. */
    public String measured(FeatureJudgement judged) {
        FindingUnit unit = judged.feature().unit();
        return number(unit, judged.measured().value()) + " " + unit(unit);
    }

    /** A flow with its unit. */
    String flow(double m3PerSecond) {
        return number(Feature.Kind.FLOW, m3PerSecond) + " " + unit(Feature.Kind.FLOW);
    }

    /** Volts to a hundredth, without the unit. */
    public String volts(double volts) {
        return Double.isFinite(volts) ? fixed("%.2f", volts) : in.say("feature.not_known");
    }

    /** The limits without their unit, e.g. {@code 1.91 to 2.21}; an open side is told. */
    public String limits(FeatureJudgement judged) {
        String low = number(judged, judged.limits().low());
        String high = number(judged, judged.limits().high());
        if (!judged.limits().hasLow()) {
            return in.say("feature.at_most", high);
        }
        return judged.limits().hasHigh() ? in.say("feature.range", low, high) : in.say("feature.at_least", low);
    }

    /** Deviation from the healthy mean in percent, signed, without the sign of percent. */
    public String deviation(FeatureJudgement judged) {
        return Double.isFinite(judged.deviation())
                ? fixed("%+.1f", judged.deviation() * 100)
                : in.say("feature.not_known");
    }

    /** Expanded uncertainty of the deviation in percent, without the sign of percent. */
    public String expandedUncertainty(FeatureJudgement judged) {
        double share = COVERAGE_FACTOR * judged.measured().standardUncertainty() / Math.abs(judged.centre());
        return Double.isFinite(share) ? fixed("%.1f", share * 100) : in.say("feature.not_known");
    }

    /** Deviation and expanded uncertainty in percent of the mean; empty where the limits have no mean. */
    String fromMean(FeatureJudgement judged, String sign) {
        return judged.limits().centre().isEmpty()
                ? ""
                : deviation(judged) + " " + sign + " " + expandedUncertainty(judged);
    }

    /** The decision in a word or two; in brackets where it is for information only. */
    public String decision(FeatureJudgement judged, Verdict verdict) {
        if (verdict == Verdict.INVALID || verdict == Verdict.NOT_TESTED) {
            return in.say("feature.not_judged");
        }
        String key = judged.judged() ? "feature.judged." : "feature.shown.";
        return in.say(key + judged.decision().name().toLowerCase(Locale.ROOT));
    }

    /** Never prints a zero with a minus sign. */
    private static String fixed(String format, double value) {
        String printed = String.format(Locale.ROOT, format, value);
        boolean zero = printed.chars().noneMatch(c -> c >= '1' && c <= '9');
        return zero && printed.startsWith("-") ? String.format(Locale.ROOT, format, 0.0) : printed;
    }
}
