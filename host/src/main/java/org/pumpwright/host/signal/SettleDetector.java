package org.pumpwright.host.signal;

import java.util.ArrayDeque;
import java.util.Deque;
import org.pumpwright.host.quantity.Require;

/**
 * Tells while a run goes on whether a reading has settled. It looks at the last 2 s in means over 0.25 s, since single
 * pulse intervals are correlated and fool simple trend tests. Settled is a window whose straight trend either is small
 * against the value, or cannot be told from scatter, and then the means must jump about as scatter does rather than
 * follow each other. Before a whole window has passed nothing is settled.
 *
 * <p>Make a new one for each set point, and feed it with edges or with values, not both. Same input, same answer.
 * Confined to one thread.
 */
public final class SettleDetector {
    private static final double BIN_SECONDS = 0.25;
    private static final int BINS = 8;

    /** Student's t for 95 % two-sided at 6 degrees of freedom (JCGM 100, table G.2). */
    private static final double SIGNIFICANT_T = 2.45;

    /**
     * Least ratio of squared successive differences to squared deviations (von Neumann). Independent means give about 2; a
     * flow that changes once within the window gives at most 1.15.
     */
    private static final double LEAST_SUCCESSION = 1.2;

    private final double changeShare;
    private final Deque<Bin> bins = new ArrayDeque<>();
    private boolean begun;
    private long binFromNanos;
    private long fromEdges;
    private long fromEdgeNanos;
    private double sum;
    private int values;

    private record Bin(double middleSeconds, double mean) {}

    /**
     * A detector that has seen nothing yet.
     *
     * @param changeShare largest change over the window, as a share of the value, that counts as settled; above 0
     */
    public SettleDetector(double changeShare) {
        this.changeShare = Require.inRange("share of change", changeShare, 1e-6, 1, "");
    }

    /**
     * One sample of a pulse meter.
     *
     * @param boardNanos time of the sample, growing
     * @param edges edges counted up to it
     * @param lastEdgeNanos time of the last of them
     */
    public void addEdges(long boardNanos, long edges, long lastEdgeNanos) {
        if (begins(boardNanos)) {
            fromEdges = edges;
            fromEdgeNanos = lastEdgeNanos;
        }
        if (!binIsFull(boardNanos)) {
            return;
        }
        double hertz = edges == fromEdges ? 0 : (edges - fromEdges) * 1e9 / (lastEdgeNanos - fromEdgeNanos);
        close(boardNanos, hertz);
        fromEdges = edges;
        fromEdgeNanos = lastEdgeNanos;
    }

    /**
     * One reading of a quantity that is not counted.
     *
     * @param boardNanos time of the reading, growing
     * @param value the reading, in any unit
     */
    public void addValue(long boardNanos, double value) {
        begins(boardNanos);
        sum += value;
        values++;
        if (binIsFull(boardNanos)) {
            close(boardNanos, sum / values);
            sum = 0;
            values = 0;
        }
    }

    private boolean begins(long boardNanos) {
        if (begun) {
            return false;
        }
        begun = true;
        binFromNanos = boardNanos;
        return true;
    }

    private boolean binIsFull(long boardNanos) {
        return boardNanos - binFromNanos >= BIN_SECONDS * 1e9;
    }

    private void close(long boardNanos, double mean) {
        bins.addLast(new Bin((binFromNanos + (boardNanos - binFromNanos) / 2) / 1e9, mean));
        if (bins.size() > BINS) {
            bins.removeFirst();
        }
        binFromNanos = boardNanos;
    }

    /** Whether the last whole window was settled. */
    public boolean settled() {
        if (bins.size() < BINS) {
            return false;
        }
        double[] times = bins.stream().mapToDouble(Bin::middleSeconds).toArray();
        double[] means = bins.stream().mapToDouble(Bin::mean).toArray();
        LineFit line = LineFit.of(times, means);
        double change = Math.abs(line.slope()) * BINS * BIN_SECONDS;
        return change <= changeShare * Math.abs(Statistics.mean(means)) || isScatter(line, means);
    }

    private static boolean isScatter(LineFit line, double[] means) {
        double t = Math.abs(line.slope()) / line.slopeUncertainty(line.scatter());
        return t < SIGNIFICANT_T && succession(means) >= LEAST_SUCCESSION;
    }

    private static double succession(double[] means) {
        double mean = Statistics.mean(means);
        double differences = 0;
        double squares = 0;
        for (int i = 0; i < means.length; i++) {
            squares += (means[i] - mean) * (means[i] - mean);
            differences += i == 0 ? 0 : (means[i] - means[i - 1]) * (means[i] - means[i - 1]);
        }
        return differences / squares;
    }
}
