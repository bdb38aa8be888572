package org.pumpwright.benchmarks.judgement;

import org.pumpwright.host.curve.Band;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.plant.PumpParameters;

/**
 * What a unit truly is against a curve before it has run: as warm as healthy units get. Thread-safe.
 *
 * @param curve the limits
 * @param doubts of healthy runs
 */
record Truth(HealthyCurve curve, Doubts doubts) {
    /** Less the centre of the healthy range, as a share of it. */
    double[] deviations(PumpParameters unit) {
        double[] deviations = new double[Feature.JUDGED.size()];
        for (int i = 0; i < deviations.length; i++) {
            Feature feature = Feature.JUDGED.get(i);
            Feature.True is = feature.trueOf(unit, doubts.kelvins()[i]);
            deviations[i] = is.value() / feature.limits(curve, is.volts()).centre() - 1;
        }
        return deviations;
    }

    /** How far outside the worst feature lies, in about its stated standard uncertainties; below 0 inside. */
    double outside(PumpParameters unit) {
        double worst = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < Feature.JUDGED.size(); i++) {
            Feature feature = Feature.JUDGED.get(i);
            Feature.True is = feature.trueOf(unit, doubts.kelvins()[i]);
            Band limits = feature.limits(curve, is.volts());
            double beyond = Math.max(limits.low() - is.value(), is.value() - limits.high());
            worst = Math.max(worst, beyond / doubts.u(i, is.value()));
        }
        return worst;
    }

    /** The largest loss of flow at a judged set point against another state of the unit, as a share. */
    double flowLost(PumpParameters before, PumpParameters after) {
        double most = 0;
        for (int i = 0; i < Feature.JUDGED.size(); i++) {
            Feature feature = Feature.JUDGED.get(i);
            if (feature.flow()) {
                double was = feature.trueOf(before, doubts.kelvins()[i]).value();
                double is = feature.trueOf(after, doubts.kelvins()[i]).value();
                most = Math.max(most, 1 - is / was);
            }
        }
        return most;
    }
}
