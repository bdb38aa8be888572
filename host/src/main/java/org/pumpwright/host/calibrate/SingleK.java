package org.pumpwright.host.calibrate;

import java.util.List;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Uncertain;

/**
 * The one K for a monitor that takes only one. Thread-safe.
 *
 * @param asCalibrated K at the working flows, weighted by their volumes, with its uncertainty on the bench
 * @param inService the same K with what changes when the meter is fitted to a planter
 * @param working the flows it is for
 * @param errors what a monitor with this K shows too much, as a share, at each calibrated flow and at both ends of the range
 * @param worst the largest of those within the declared range, either way
 */
public record SingleK(
        Stated asCalibrated, Stated inService, List<WorkingFlow> working, List<ErrorAt> errors, ErrorAt worst) {
    /** By how much a volume is shown too large at a flow, as a share; below 0 where too small. */
    public record ErrorAt(FlowRate flow, double share) {}

    /** What one K is good for over the declared range. The limits are common practice, no source. */
    public enum Acceptance {
        WITHIN_ONE_PERCENT("within ±1 % over the range"),
        WITHIN_TWO_PERCENT("within ±2 % over the range: shop grade"),
        TABLE_NEEDED("off by more than 2 % over the range: use a table or a shorter range");

        private final String words;

        Acceptance(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    private static final double GOOD = 0.01;
    private static final double SHOP = 0.02;

    public SingleK {
        working = List.copyOf(working);
        errors = List.copyOf(errors);
    }

    static SingleK of(BucketTest test, List<FlowPoint> points, KOverFlow curve) {
        Declared declared = test.declared();
        Stated stated = curve.mean(declared.working());
        RangeErrors range = RangeErrors.of(declared, points, curve, stated.k());
        return new SingleK(stated, inService(stated, test.rules()), declared.working(), range.all(), range.worst());
    }

    private static Stated inService(Stated stated, Rules rules) {
        Uncertain share = new Uncertain(1, stated.standardShare(), stated.degreesOfFreedom())
                .with(rules.refitShare() / Math.sqrt(3), BudgetTerm.JUDGED)
                .with(rules.installationShare() / Math.sqrt(3), BudgetTerm.JUDGED);
        return Stated.of(stated.k(), share, stated.level());
    }

    public KFactor k() {
        return asCalibrated.k();
    }

    public Acceptance acceptance() {
        double off = Math.abs(worst.share());
        if (off <= GOOD) {
            return Acceptance.WITHIN_ONE_PERCENT;
        }
        return off <= SHOP ? Acceptance.WITHIN_TWO_PERCENT : Acceptance.TABLE_NEEDED;
    }
}
