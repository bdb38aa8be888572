package org.pumpwright.host.plant;

import java.util.Arrays;

/** Times of one step's edges, growing as needed. Confined to the plant's thread. */
public final class EdgeTimes {

    private double[] seconds = new double[16];
    private int count;

    public void add(double time) {
        if (count == seconds.length) {
            seconds = Arrays.copyOf(seconds, 2 * count);
        }
        seconds[count++] = time;
    }

    /** The times so far, which are then forgotten. */
    public double[] take() {
        double[] taken = Arrays.copyOf(seconds, count);
        count = 0;
        return taken;
    }
}
