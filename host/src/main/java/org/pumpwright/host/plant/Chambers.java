package org.pumpwright.host.plant;

import java.util.Random;

/**
 * The chambers of one unit round the turn: each pushes by the sine of its angle over half a turn, and delivers only once
 * it has made up for what it lost (valve closing, bent diaphragm), which cuts the begin of its stroke off. Equal
 * chambers give lines at once and twice their number times the shaft's speed, unequal or dead ones a line at the shaft's
 * speed. Means over a turn are those of {@link OperatingCurve}. Thread-safe.
 */
final class Chambers {

    private static final double TURN = 2 * Math.PI;

    private final double[] inequality;

    Chambers(int number, double spread, Random random) {
        inequality = new double[number];
        double mean = 0;
        for (int i = 0; i < number; i++) {
            inequality[i] = spread * random.nextGaussian();
            mean += inequality[i] / number;
        }
        for (int i = 0; i < number; i++) {
            inequality[i] -= mean;
        }
    }

    /** Each chamber's share of the displacement, dead ones taken from the first on. */
    double[] shares(double dead) {
        int n = inequality.length;
        double[] shares = new double[n];
        double left = dead;
        for (int i = 0; i < n; i++) {
            double lost = Math.min(1, left);
            shares[i] = (1 + inequality[i]) * (1 - lost) / n;
            left -= lost;
        }
        return shares;
    }

    /**
     * What the chambers deliver at an angle, over the mean of chambers that lose nothing.
     *
     * @param lost share of each stroke lost at its begin, 0..1
     */
    static double delivery(double[] shares, double angle, double lost) {
        double delivered = 0;
        for (int i = 0; i < shares.length; i++) {
            double phase = angle + TURN * i / shares.length;
            double push = StrictMath.sin(phase);
            if (push > 0 && StrictMath.cos(phase) < 1 - 2 * lost) {
                delivered += shares[i] * Math.PI * push;
            }
        }
        return delivered;
    }
}
