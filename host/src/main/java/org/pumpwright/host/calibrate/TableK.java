package org.pumpwright.host.calibrate;

import java.util.List;
import org.pumpwright.host.quantity.FlowRate;

/**
 * The measured K with straight lines between the flows; beyond the first and last flow K stays as it is there. For meters that the
 * law does not describe. What a straight line misses between two flows is not in the stated uncertainty. Thread-safe.
 */
public final class TableK implements KOverFlow {
    private final List<FlowPoint> points;
    private final double level;

    TableK(List<FlowPoint> points, double level) {
        this.points = List.copyOf(points);
        this.level = level;
    }

    /** The points of the table, the lowest flow first. */
    public List<FlowPoint> points() {
        return points;
    }

    @Override
    public Stated at(FlowRate flow) {
        return Stated.of(Propagation.ofPoints(points, weights(flow.m3PerSecond())), level);
    }

    @Override
    public Stated mean(List<WorkingFlow> flows) {
        return Stated.of(Propagation.ofPoints(points, Weights.mean(flows, this::weights)), level);
    }

    private double[] weights(double m3PerSecond) {
        double[] weights = new double[points.size()];
        int high = 0;
        while (high < weights.length && flow(high) < m3PerSecond) {
            high++;
        }
        if (high == 0 || high == weights.length) {
            weights[Math.min(high, weights.length - 1)] = 1;
            return weights;
        }
        double share = (m3PerSecond - flow(high - 1)) / (flow(high) - flow(high - 1));
        weights[high - 1] = 1 - share;
        weights[high] = share;
        return weights;
    }

    private double flow(int index) {
        return points.get(index).flow().m3PerSecond();
    }

    @Override
    public String words() {
        return "table with straight lines between the flows";
    }
}
