package org.pumpwright.host.signal;

import java.util.Arrays;

/**
 * The least-squares line of edge time on edge number, each blade with an offset of its own. Taking the blades' means off
 * both sides first gives the same slope as fitting them along (Frisch and Waugh 1933). Confined to one thread.
 */
final class EdgeLine {
    private final double[] numbers;
    private final int blades;
    private final double[] spreadNumbers;
    private final double[] residuals;
    private final double slope;
    private final double spread;

    private EdgeLine(double[] numbers, double[] seconds, int blades) {
        this.numbers = numbers;
        this.blades = blades;
        spreadNumbers = BladePattern.without(numbers, numbers, blades);
        double[] spreadSeconds = BladePattern.without(numbers, seconds, blades);
        double squares = 0;
        double products = 0;
        for (int i = 0; i < numbers.length; i++) {
            squares += spreadNumbers[i] * spreadNumbers[i];
            products += spreadNumbers[i] * spreadSeconds[i];
        }
        spread = squares;
        slope = products / squares;
        residuals = new double[numbers.length];
        Arrays.setAll(residuals, i -> spreadSeconds[i] - slope * spreadNumbers[i]);
    }

    /** The line through at least 3 edges; 1 blade where no pattern is to be taken out. */
    static EdgeLine of(double[] numbers, double[] seconds, int blades) {
        return new EdgeLine(numbers, seconds, blades);
    }

    /** Time from edge to edge, s. */
    double slope() {
        return slope;
    }

    /** Standard uncertainty of the slope, s, for edges that stray independently with this standard deviation. */
    double slopeUncertainty(double edgeDeviation) {
        return edgeDeviation / Math.sqrt(spread);
    }

    int degreesOfFreedom() {
        return numbers.length - 1 - BladePattern.touched(numbers, blades);
    }

    /** Standard deviation of the edges about the line, s. */
    double scatter() {
        double squares = 0;
        for (double residual : residuals) {
            squares += residual * residual;
        }
        return Math.sqrt(squares / degreesOfFreedom());
    }

    double[] residuals() {
        return residuals;
    }

    /** The edge numbers as the slope sees them: less the mean of their blade. */
    double[] spreadNumbers() {
        return spreadNumbers;
    }

    /** A cosine of this many half periods over the train, less the means of the blades. */
    double[] cosine(int halfPeriods) {
        double first = numbers[0];
        double length = numbers[numbers.length - 1] - first + 1;
        double[] cosine = Arrays.stream(numbers)
                .map(number -> Math.cos(Math.PI * halfPeriods * (number - first + 0.5) / length))
                .toArray();
        return BladePattern.without(numbers, cosine, blades);
    }
}
