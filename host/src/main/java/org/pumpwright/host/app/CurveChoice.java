package org.pumpwright.host.app;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.record.RunRecord.CurveUsed;

/** Which healthy curve a run is held against. Thread-safe. */
final class CurveChoice {
    private static final Comparator<HealthyCurve> NEWEST =
            Comparator.comparingInt(HealthyCurve::version).thenComparing(HealthyCurve::id);

    private CurveChoice() {}

    /**
     * The newest curve of the conditions of a run; empty where there is none and the plan judges nothing.
     *
     * @throws OrderException when the plan judges and there is none
     */
    static Optional<HealthyCurve> newest(Plan plan, List<HealthyCurve> curves, Conditions run) throws OrderException {
        Optional<HealthyCurve> newest = curves.stream()
                .filter(curve -> curve.conditions().differences(run).isEmpty())
                .max(NEWEST);
        if (newest.isEmpty() && !plan.judged().isEmpty()) {
            throw noCurve(run);
        }
        return newest;
    }

    /** What a record keeps of the curve. */
    static CurveUsed used(HealthyCurve curve) {
        return new CurveUsed(
                curve.label(), curve.units(), curve.toleranceFactor(), curve.coverage(), curve.simulated());
    }

    private static OrderException noCurve(Conditions run) {
        return new OrderException(String.format(
                Locale.ROOT,
                "there is no healthy curve for model %s with driver %s at %.0f Hz, nozzle %s and %s, so nothing could be"
                        + " judged. Fit the driver and nozzle of an existing curve, or have one made from known-good units.",
                run.model(),
                run.driver(),
                run.pwmHz(),
                run.nozzle(),
                run.fluid()));
    }
}
