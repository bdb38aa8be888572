package org.pumpwright.host.signal;

import java.util.Arrays;

/**
 * An ordinary least-squares straight line {@code y = meanY + slope * (x - meanX)} (JCGM 100, H.3). Thread-safe.
 */
public final class LineFit {
    private final double slope;
    private final double meanX;
    private final double meanY;
    private final double spreadX;
    private final double[] residuals;

    private LineFit(double slope, double meanX, double meanY, double spreadX, double[] residuals) {
        this.slope = slope;
        this.meanX = meanX;
        this.meanY = meanY;
        this.spreadX = spreadX;
        this.residuals = residuals;
    }

    /**
     * The line through the points.
     *
     * @throws IllegalArgumentException with fewer than 3 points, since a line through 2 leaves nothing to judge it by, or
     *     when all x are the same
     */
    public static LineFit of(double[] x, double[] y) {
        if (x.length != y.length || x.length < 3) {
            throw new IllegalArgumentException(
                    "a line is fitted to %d x and %d y, it needs at least 3 of both".formatted(x.length, y.length));
        }
        double meanX = Statistics.mean(x);
        double meanY = Statistics.mean(y);
        double sxx = 0;
        double sxy = 0;
        for (int i = 0; i < x.length; i++) {
            sxx += (x[i] - meanX) * (x[i] - meanX);
            sxy += (x[i] - meanX) * (y[i] - meanY);
        }
        if (sxx == 0) {
            throw new IllegalArgumentException("a line needs points at different x, all are at " + x[0]);
        }
        double slope = sxy / sxx;
        double[] residuals = new double[x.length];
        Arrays.setAll(residuals, i -> y[i] - meanY - slope * (x[i] - meanX));
        return new LineFit(slope, meanX, meanY, sxx, residuals);
    }

    public double slope() {
        return slope;
    }

    public double at(double x) {
        return meanY + slope * (x - meanX);
    }

    /** What the line leaves over, in order. */
    public double[] residuals() {
        return residuals.clone();
    }

    /** Degrees of freedom, n - 2. */
    public int degreesOfFreedom() {
        return residuals.length - 2;
    }

    /** Standard deviation of the points about the line, divisor n - 2. */
    public double scatter() {
        double squares = 0;
        for (double residual : residuals) {
            squares += residual * residual;
        }
        return Math.sqrt(squares / degreesOfFreedom());
    }

    /** Standard uncertainty of the slope for a known scatter of the single point. */
    public double slopeUncertainty(double scatter) {
        return scatter / Math.sqrt(spreadX);
    }
}
