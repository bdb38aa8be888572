package org.pumpwright.host.signal;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import org.pumpwright.host.quantity.Require;

/**
 * Tells while a run goes on whether a reading has settled. It looks at the last eight means over 0.25 s or three pulses,
 * whichever is longer (so over 2 s or 24 pulses), since single pulse intervals are correlated and fool simple trend tests.
 *
 * <p>Settled is a window whose straight trend either is small against the value or cannot be told from scatter (t test of
 * the slope), and whose means either all lie as close together as the share of change allows or jump about as scatter
 * does rather than follow each other (von Neumann 1941: ratio of squared successive differences to squared deviations).
 * Before a whole window has passed nothing is settled; a meter that gives no pulse for 2 s has settled at no flow.
 *
 * <p>Make a new one for each set point, and feed it with edges or with values, not both. Same input, same answer.
 * Confined to one thread.
 */
public final class SettleDetector {
    private static final double BIN_SECONDS = 0.25;
    private static final int BINS = 8;
    private static final double STILL_SECONDS = BINS * BIN_SECONDS;

    /** Eight means then hold 24 pulses; at least 20 are wanted. */
    private static final int LEAST_PULSES_PER_BIN = 3;

    private static final double LONGEST_OPEN = 2;

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
    private long stillFromNanos;
    private long stillEdges;
    private long latestNanos;
    private boolean counts;
    private double sum;
    private int values;

    private record Bin(double middleSeconds, double mean, double seconds) {}

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
            counts = true;
            fromEdges = edges;
            fromEdgeNanos = lastEdgeNanos;
            stillEdges = edges;
            stillFromNanos = boardNanos;
        }
        latestNanos = boardNanos;
        if (edges != stillEdges) {
            endStill(boardNanos, edges, lastEdgeNanos);
        }
        if (binIsFull(boardNanos) && edges - fromEdges >= LEAST_PULSES_PER_BIN) {
            close(boardNanos, (edges - fromEdges) * 1e9 / (lastEdgeNanos - fromEdgeNanos));
            fromEdges = edges;
            fromEdgeNanos = lastEdgeNanos;
        }
    }

    /** After a stand-still, as before the first edge, the means begin anew: an interval that holds it is no flow's. */
    private void endStill(long boardNanos, long edges, long lastEdgeNanos) {
        if (standsStill()) {
            bins.clear();
            binFromNanos = boardNanos;
            fromEdges = edges;
            fromEdgeNanos = lastEdgeNanos;
        }
        stillEdges = edges;
        stillFromNanos = boardNanos;
    }

    private boolean standsStill() {
        return counts && latestNanos - stillFromNanos >= STILL_SECONDS * 1e9;
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
        double length = (boardNanos - binFromNanos) / 1e9;
        bins.addLast(new Bin(binFromNanos / 1e9 + length / 2, mean, length));
        if (bins.size() > BINS) {
            bins.removeFirst();
        }
        binFromNanos = boardNanos;
    }

    /** Whether the last whole window was settled. */
    public boolean settled() {
        if (standsStill()) {
            return true;
        }
        if (bins.size() < BINS || fallsSilent()) {
            return false;
        }
        double[] times = bins.stream().mapToDouble(Bin::middleSeconds).toArray();
        double[] means = bins.stream().mapToDouble(Bin::mean).toArray();
        LineFit line = LineFit.of(times, means);
        double allowed = changeShare * Math.abs(Statistics.mean(means));
        double length = (times[BINS - 1] - times[0]) * BINS / (BINS - 1);
        boolean level = Math.abs(line.slope()) * length <= allowed || !significant(line);
        return level && (range(means) <= allowed || succession(means) >= LEAST_SUCCESSION);
    }

    /** Pulses that stay away much longer than before: the means are of a flow that is over. */
    private boolean fallsSilent() {
        double longest = bins.stream().mapToDouble(Bin::seconds).max().orElseThrow();
        return counts && (latestNanos - binFromNanos) / 1e9 > LONGEST_OPEN * longest;
    }

    private static boolean significant(LineFit line) {
        return Math.abs(line.slope()) / line.slopeUncertainty(line.scatter()) >= SIGNIFICANT_T;
    }

    private static double range(double[] means) {
        return Arrays.stream(means).max().orElseThrow()
                - Arrays.stream(means).min().orElseThrow();
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
