package org.pumpwright.host.ui.work;

import java.util.Locale;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord.KValue;

/**
 * K of a bucket test for people who stand two metres away: per gallon where gallons are read, else per litre, with its expanded
 * uncertainty in the same unit. Thread-safe.
 *
 * @param value with the last figure where the uncertainty has its second, as on the papers
 * @param uncertainty expanded, with two figures
 * @param unit in words
 */
public record KWords(String value, String uncertainty, Word unit) {
    private static final int MOST_DECIMALS = 4;

    /** In the unit that goes with these units. */
    public static KWords of(KValue k, UnitSystem units) {
        KFactor factor = new KFactor(k.pulsesPerM3());
        return units == UnitSystem.US
                ? of(factor.pulsesPerUsGallon(), k, "ui.bucket.per_gallon")
                : of(factor.pulsesPerLitre(), k, "ui.bucket.per_litre");
    }

    private static KWords of(double value, KValue k, String unit) {
        double uncertainty = k.relativeExpandedUncertainty() * value;
        int place = uncertainty > 0 && Double.isFinite(uncertainty) ? (int) Math.floor(Math.log10(uncertainty)) : 0;
        String pattern = "%." + Math.min(MOST_DECIMALS, Math.max(0, 1 - place)) + "f";
        return new KWords(
                String.format(Locale.ROOT, pattern, value),
                "± " + String.format(Locale.ROOT, pattern, uncertainty),
                Word.of(unit));
    }
}
