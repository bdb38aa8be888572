package org.pumpwright.host.cli;

import java.util.List;
import java.util.function.DoubleFunction;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;

/**
 * One quantity of a healthy curve in the units that are shown, over effective volts. Thread-safe.
 *
 * @param name what is shown, with its unit
 * @param fromVolts where the curve begins
 * @param toVolts where it ends
 * @param pointVolts where its points are
 * @param band the healthy range at a value of effective volts
 */
record CurveSeries(String name, double fromVolts, double toVolts, List<Double> pointVolts, DoubleFunction<Band> band) {
    private static final int STEPS = 200;

    /** Flow and motor amps. */
    static List<CurveSeries> of(HealthyCurve curve, UnitSystem units) {
        boolean metric = units == UnitSystem.METRIC;
        double scale = metric ? new FlowRate(1).litresPerMinute() : new FlowRate(1).gallonsPerMinute();
        return List.of(
                series(curve, metric ? "flow, L/min" : "flow, gal/min", volts -> scaled(curve.flow(volts), scale)),
                series(curve, "motor amps, A", curve::motorAmps));
    }

    /** The largest value of the band. */
    double largest() {
        double largest = 0;
        for (int i = 0; i <= STEPS; i++) {
            largest = Math.max(
                    largest,
                    band.apply(fromVolts + (toVolts - fromVolts) * i / STEPS).high());
        }
        return largest;
    }

    private static CurveSeries series(HealthyCurve curve, String name, DoubleFunction<Band> band) {
        List<Double> volts =
                curve.points().stream().map(point -> point.effectiveVolts()).toList();
        return new CurveSeries(name, volts.get(0), volts.get(volts.size() - 1), volts, band);
    }

    private static Band scaled(Band band, double scale) {
        return new Band(band.low() * scale, band.centre() * scale, band.high() * scale);
    }
}
