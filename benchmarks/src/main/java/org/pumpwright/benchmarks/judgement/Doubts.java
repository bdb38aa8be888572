package org.pumpwright.benchmarks.judgement;

import java.util.List;

/**
 * What the runs of healthy units show that is needed before a unit is run: how warm it gets by each judged point, and how large
 * the stated uncertainties are. Thread-safe.
 *
 * @param kelvins winding temperature at each of {@link Feature#JUDGED}
 * @param factors stated uncertainty over that of the calibrations alone
 */
record Doubts(double[] kelvins, double[] factors) {
    private static final double METER_SHARE = 0.005;
    private static final double AMPS_SHARE = 0.005;
    private static final double AMPS_OFFSET = 0.03;

    static Doubts of(List<Judgement> healthy) {
        List<Judgement> whole =
                healthy.stream().filter(j -> !j.readings().isEmpty()).toList();
        int count = Feature.JUDGED.size();
        double[] kelvins = new double[count];
        double[] factors = new double[count];
        for (Judgement judgement : whole) {
            for (int i = 0; i < count; i++) {
                Feature feature = Feature.JUDGED.get(i);
                Judgement.Reading reading = judgement.readings().get(i);
                kelvins[i] += judgement.kelvins().get(i) / whole.size();
                factors[i] += reading.u() / byCalibration(feature, reading.value()) / whole.size();
            }
        }
        return new Doubts(kelvins, factors);
    }

    /** About the standard uncertainty that will be stated. */
    double u(int feature, double value) {
        return factors[feature] * byCalibration(Feature.JUDGED.get(feature), value);
    }

    private static double byCalibration(Feature feature, double value) {
        return feature.flow() ? METER_SHARE * value : Math.hypot(AMPS_SHARE * value, AMPS_OFFSET / feature.duty());
    }
}
