package org.pumpwright.host.calibrate;

import java.util.List;
import java.util.function.DoubleFunction;

/** Weights of the calibrated points in a mean over working flows. */
final class Weights {
    private Weights() {}

    /**
     * The mean.
     *
     * @param at gives the points' weights in K at a flow in m3/s
     */
    static double[] mean(List<WorkingFlow> flows, DoubleFunction<double[]> at) {
        double total = 0;
        for (WorkingFlow flow : flows) {
            total += flow.volumeShare();
        }
        double[] sum = new double[0];
        for (WorkingFlow flow : flows) {
            double[] weights = at.apply(flow.flow().m3PerSecond());
            sum = sum.length == 0 ? new double[weights.length] : sum;
            for (int i = 0; i < weights.length; i++) {
                sum[i] += flow.volumeShare() / total * weights[i];
            }
        }
        return sum;
    }
}
