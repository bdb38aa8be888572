package org.pumpwright.host.report.bucket;

import java.util.Locale;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.quantity.Volume;
import org.pumpwright.host.record.BucketRecord.KValue;
import org.pumpwright.host.text.Interpreter;

/** Figures of a bucket test for people: as many decimals as the uncertainty allows, both units where both are used. Thread-safe. */
final class Figures {
    private static final double PERCENT = 100;
    private static final double LITRES_PER_M3 = 1000;
    private static final int MOST_DECIMALS = 4;

    private final UnitSystem units;
    private final Interpreter in;

    Figures(UnitSystem units, Interpreter in) {
        this.units = units;
        this.in = in;
    }

    boolean us() {
        return units == UnitSystem.US;
    }

    /** Pulses per US gallon with the last figure where the expanded uncertainty has its second. */
    static String perUsGallon(KValue k) {
        return rounded(
                k.pulsesPerM3() * Volume.M3_PER_US_GALLON,
                k.relativeExpandedUncertainty() * k.pulsesPerM3() * Volume.M3_PER_US_GALLON);
    }

    static String perLitre(KValue k) {
        return rounded(
                k.pulsesPerM3() / LITRES_PER_M3, k.relativeExpandedUncertainty() * k.pulsesPerM3() / LITRES_PER_M3);
    }

    private static String rounded(double value, double expandedUncertainty) {
        int decimals = 1;
        if (expandedUncertainty > 0 && Double.isFinite(expandedUncertainty)) {
            int place = (int) Math.floor(Math.log10(expandedUncertainty));
            decimals = Math.min(MOST_DECIMALS, Math.max(0, 1 - place));
        }
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /** K in the shop's own unit, to a tenth of a pulse. */
    String k(double pulsesPerM3) {
        return units == UnitSystem.US
                ? String.format(Locale.ROOT, "%.1f", pulsesPerM3 * Volume.M3_PER_US_GALLON)
                : String.format(Locale.ROOT, "%.2f", pulsesPerM3 / LITRES_PER_M3);
    }

    String kUnit() {
        return in.say(us() ? "bucket.pulses_per_gallon" : "bucket.pulses_per_litre");
    }

    String flow(double m3PerSecond) {
        FlowRate flow = new FlowRate(m3PerSecond);
        return units == UnitSystem.US
                ? String.format(Locale.ROOT, "%.3f", flow.gallonsPerMinute())
                : String.format(Locale.ROOT, "%.3f", flow.litresPerMinute());
    }

    String flowUnit() {
        return units == UnitSystem.US ? "gal/min" : "L/min";
    }

    /** A range of flows in both units. */
    String range(double lowest, double highest) {
        FlowRate low = new FlowRate(lowest);
        FlowRate high = new FlowRate(highest);
        return in.say(
                "bucket.both_ranges",
                hundredths(low.gallonsPerMinute()),
                hundredths(high.gallonsPerMinute()),
                hundredths(low.litresPerMinute()),
                hundredths(high.litresPerMinute()));
    }

    private static String hundredths(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    /** A share as percent with two decimals, without its unit. */
    static String percent(double share) {
        return String.format(Locale.ROOT, "%.2f", PERCENT * share);
    }

    /** A share of a budget: three decimals, as small parts matter there. */
    static String percentFine(double share) {
        return String.format(Locale.ROOT, "%.3f", PERCENT * share);
    }

    static String signedPercent(double share) {
        String text = String.format(Locale.ROOT, "%+.2f", PERCENT * share);
        return text.equals("-0.00") ? "+0.00" : text;
    }

    static String degrees(double degreesOfFreedom) {
        return Double.isInfinite(degreesOfFreedom) || degreesOfFreedom > 999
                ? "inf"
                : String.format(Locale.ROOT, "%.0f", Math.floor(degreesOfFreedom));
    }

    static String factor(double coverageFactor) {
        return String.format(Locale.ROOT, "%.2f", coverageFactor);
    }
}
