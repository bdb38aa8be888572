package org.pumpwright.host.signal;

/**
 * How even a pulse train is while the flow should be steady. Edge jitter and the meter's blade pattern make neighbouring
 * intervals unlike: each late edge lengthens one interval and shortens the next. Air slugs and surging flow make
 * neighbours alike, and by much more than jitter does. Thread-safe.
 *
 * @param variation standard deviation of the mean intervals over their mean, after a straight trend is taken out
 * @param lagOne their lag-one correlation, -1 to 1
 * @param intervals how many there are
 */
public record PulseHealth(double variation, double lagOne, int intervals) {
    /** A healthy rotor meter's single intervals vary by about 2 %, means of several by less. */
    public static final double MOST_VARIATION = 0.025;

    /** Healthy intervals are at or below 0, or nearly even. */
    public static final double MOST_LAG_ONE = 0.3;

    /** Fewer intervals say nothing. */
    public static final int LEAST_INTERVALS = 40;

    /** The health of a train; a train too short to judge counts as even. */
    public static PulseHealth of(PulseTrain train) {
        double[] intervals = train.meanIntervals();
        if (intervals.length < LEAST_INTERVALS) {
            return new PulseHealth(0, 0, intervals.length);
        }
        double[] order = new double[intervals.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        double[] residuals = LineFit.of(order, intervals).residuals();
        double variation = Statistics.deviation(residuals) / Statistics.mean(intervals);
        return new PulseHealth(variation, Statistics.lagOne(residuals), intervals.length);
    }

    /** True when the intervals wander together far more than edge jitter can explain: air, or a surging flow. */
    public boolean unsteady() {
        return variation > MOST_VARIATION && lagOne > MOST_LAG_ONE;
    }
}
