package org.pumpwright.host.report.retest;

import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.report.FeaturePrinter;

/**
 * What one feature was before and is after. Where both were held against one curve, the change is that of the measured value over
 * the healthy mean at the volts the unit really had, so that another supply voltage is no change of the unit; elsewhere it is that
 * of the value itself. Thread-safe.
 *
 * @param before as first judged; empty where it was not measured then
 * @param after as judged later; empty where it was not measured again
 * @param sameCurve whether both runs were held against the same curve
 */
public record Change(Optional<FeatureJudgement> before, Optional<FeatureJudgement> after, boolean sameCurve) {
    /** ISO 5725-6, 4.1: two results differ by more than this many s_R in about 5 % of cases by chance. */
    public static final double REPRODUCIBILITY_FACTOR = 2.8;

    /** Whether a change is larger than chance from run to run. */
    public enum Moved {
        YES,
        NO,
        /** The spread from run to run is not known, or the two values cannot be compared. */
        NOT_KNOWN
    }

    /** The feature itself. */
    public Feature feature() {
        return either().feature();
    }

    /** What there is of the two. */
    public FeatureJudgement either() {
        return before.or(() -> after).orElseThrow();
    }

    /** True when it made a verdict in either run. */
    public boolean judged() {
        return before.filter(FeatureJudgement::judged).isPresent()
                || after.filter(FeatureJudgement::judged).isPresent();
    }

    /** True when the change is a share of the healthy mean; false when it is in the feature's own unit. */
    public boolean ofTheMean() {
        return sameCurve
                && before.filter(Change::hasMean).isPresent()
                && after.filter(Change::hasMean).isPresent();
    }

    private static boolean hasMean(FeatureJudgement judged) {
        return Double.isFinite(judged.centre()) && judged.centre() != 0;
    }

    /**
     * After less before. The two uncertainties are taken as independent; what they have in common, as the meter's K, makes the
     * true one smaller.
     */
    public Optional<Uncertain> size() {
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        Uncertain was = scaled(before.get());
        Uncertain is = scaled(after.get());
        double u = Math.hypot(was.standardUncertainty(), is.standardUncertainty());
        return Optional.of(Uncertain.of(is.value() - was.value(), u));
    }

    private Uncertain scaled(FeatureJudgement judged) {
        return ofTheMean() ? judged.measured().times(1 / judged.centre()) : judged.measured();
    }

    /** Expanded uncertainty of the change, k = 2. */
    public OptionalDouble expandedUncertainty() {
        return size().map(change -> OptionalDouble.of(FeaturePrinter.COVERAGE_FACTOR * change.standardUncertainty()))
                .orElse(OptionalDouble.empty());
    }

    /** What two runs of an unchanged unit may differ by, as the change is counted; empty where the spread is not known. */
    public OptionalDouble limit(RunSpread spread) {
        if (!ofTheMean()) {
            return OptionalDouble.empty();
        }
        OptionalDouble share =
                spread.share(feature().quantity(), after.orElseThrow().volts());
        return share.isPresent()
                ? OptionalDouble.of(REPRODUCIBILITY_FACTOR * share.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Whether it moved by more than that. */
    public Moved moved(RunSpread spread) {
        OptionalDouble limit = limit(spread);
        Optional<Uncertain> size = size();
        if (limit.isEmpty() || size.isEmpty()) {
            return Moved.NOT_KNOWN;
        }
        return Math.abs(size.get().value()) > limit.getAsDouble() ? Moved.YES : Moved.NO;
    }
}
