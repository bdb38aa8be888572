package org.pumpwright.host.calibrate;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.pumpwright.host.quantity.Budget;
import org.pumpwright.host.quantity.FlowRate;

/**
 * {@code K(Q) = K_inf (1 - b/Q)}: a rotor that is held back as if by the flow b. Thread-safe.
 */
public final class FittedK implements KOverFlow {
    /** A law that holds is called wrong this often. */
    private static final double WRONG_BY_CHANCE = 0.01;

    private static final int LEAST_POINTS = 3;

    private final List<FlowPoint> points;
    private final double level;
    private final LawFit fit;
    private final double chiSquared;

    /**
     * Fits the law.
     *
     * @param points at least three, at different flows
     */
    FittedK(List<FlowPoint> points, double level) {
        if (points.size() < LEAST_POINTS) {
            throw new IllegalArgumentException(
                    "a fit of two figures needs at least 3 flows to leave a residual, there are " + points.size());
        }
        this.points = List.copyOf(points);
        this.level = level;
        this.fit = new LawFit(points);
        this.chiSquared = fit.chiSquared();
    }

    /** The K that the law goes to at high flow. */
    public Stated kAtHighFlow() {
        return Stated.of(Propagation.ofPoints(points, fit.constant()), level);
    }

    /** The flow b that the rotor loses; below 0 where K rises towards low flow. */
    public FlowRate loss() {
        return new FlowRate(fit.loss() / kAtHighFlow().k().pulsesPerM3());
    }

    /** Standard uncertainty of b, m3/s, with the correlation of b with K at high flow. */
    public double lossStandardM3PerSecond() {
        Budget constant = Propagation.ofPoints(points, fit.constant()).budget();
        Budget slope = fit.lossBudget();
        double b = slope.value() / constant.value();
        double variance =
                slope.covariance(slope) - 2 * b * slope.covariance(constant) + b * b * constant.covariance(constant);
        return Math.sqrt(Math.max(0, variance)) / constant.value();
    }

    /** Covariance of K at high flow (pulses/m3) and of K at high flow times b (pulses/s): variance, covariance, variance. */
    public double[] covariance() {
        Budget constant = Propagation.ofPoints(points, fit.constant()).budget();
        Budget slope = fit.lossBudget();
        return new double[] {constant.covariance(constant), constant.covariance(slope), slope.covariance(slope)};
    }

    @Override
    public Stated at(FlowRate flow) {
        return Stated.of(Propagation.ofPoints(points, fit.at(flow.m3PerSecond())), level);
    }

    @Override
    public Stated mean(List<WorkingFlow> flows) {
        return Stated.of(Propagation.ofPoints(points, Weights.mean(flows, fit::at)), level);
    }

    /** Measured less fitted K over fitted, at each flow in the order of the points. */
    public List<Double> residualShares() {
        List<Double> residuals = new ArrayList<>();
        for (FlowPoint point : points) {
            double fitted = at(point.flow()).k().pulsesPerM3();
            residuals.add(point.k().pulsesPerM3() / fitted - 1);
        }
        return residuals;
    }

    /** Sum of the squared residuals in units of the uncertainties, correlations counted. */
    public double chiSquared() {
        return chiSquared;
    }

    public int degreesOfFreedom() {
        return points.size() - 2;
    }

    /** How often a sum this large or larger comes by chance when the law holds. */
    public double chance() {
        return 1 - new ChiSquaredDistribution(degreesOfFreedom()).cumulativeProbability(chiSquared);
    }

    /** Whether the points agree with the law. */
    public boolean fits() {
        return chance() >= WRONG_BY_CHANCE;
    }

    @Override
    public String words() {
        return "K = K_inf (1 - b/Q), weighted fit";
    }
}
