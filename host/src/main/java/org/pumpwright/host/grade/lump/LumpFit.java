package org.pumpwright.host.grade.lump;

import java.util.List;
import java.util.Locale;
import org.hipparchus.exception.MathRuntimeException;

/**
 * Lumps from a sweep: weighted nonlinear least squares by Levenberg's and Marquardt's method, the uncertainties of all
 * channels counted and shared ones as unknowns known to their uncertainty. The covariance is the inverse of the normal
 * matrix at the solution, with the stated uncertainties as they are and not scaled to the scatter. Thread-safe.
 */
public sealed interface LumpFit {
    /** The fit went well. */
    record Fitted(Lumps lumps) implements LumpFit {}

    /**
     * There is no fit.
     *
     * @param reason for people
     */
    record Refused(String reason) implements LumpFit {}

    /** A flow below this many of its uncertainties is none: such a point shows no turning pump. */
    double CLEAR_FLOW = 3;

    /** The lumps of a sweep, or why there are none. */
    static LumpFit of(LumpInput input) {
        List<LumpPoint> turning = input.points().stream()
                .filter(point ->
                        point.flow().value() > CLEAR_FLOW * point.flow().standardUncertainty())
                .toList();
        SweepModel model = new SweepModel(input, turning);
        if (model.degreesOfFreedom() < 1) {
            return new Refused(String.format(
                    Locale.ROOT,
                    "%d points with flow leave %d degrees of freedom for %d lumps, at least 1 is needed",
                    turning.size(),
                    model.degreesOfFreedom(),
                    Layout.LUMPS));
        }
        try {
            Minimum minimum = Minimum.of(model, model.rows(), model.start());
            return new Fitted(Lumps.of(input, minimum, model.degreesOfFreedom()));
        } catch (MathRuntimeException e) {
            return new Refused("the fit does not settle: the readings do not belong together or leave a lump open");
        }
    }
}
