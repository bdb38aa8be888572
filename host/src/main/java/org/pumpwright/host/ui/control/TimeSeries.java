package org.pumpwright.host.ui.control;

import java.util.Arrays;

/** What one quantity was over the time, in the order of time. It only grows. Confined to one thread. */
public final class TimeSeries {
    private static final int FIRST_ROOM = 1024;

    private double[] seconds = new double[FIRST_ROOM];
    private double[] values = new double[FIRST_ROOM];
    private int size;

    /**
     * Adds a value at the end; one that is no number leaves a gap in the line.
     *
     * @param second when, in seconds
     * @throws IllegalArgumentException when it lies before the last one
     */
    public void add(double second, double value) {
        if (size > 0 && second < seconds[size - 1]) {
            throw new IllegalArgumentException(
                    "a value at %s s comes after one at %s s".formatted(second, seconds[size - 1]));
        }
        if (size == seconds.length) {
            seconds = Arrays.copyOf(seconds, 2 * size);
            values = Arrays.copyOf(values, 2 * size);
        }
        seconds[size] = second;
        values[size] = value;
        size++;
    }

    /** How many values there are. */
    public int size() {
        return size;
    }

    /** When the value at this place was, in seconds. */
    public double second(int place) {
        return seconds[checked(place)];
    }

    /** The value at this place. */
    public double value(int place) {
        return values[checked(place)];
    }

    /** The first place at this time or later; {@link #size} when there is none. */
    public int from(double second) {
        int place = Arrays.binarySearch(seconds, 0, size, second);
        if (place < 0) {
            return -place - 1;
        }
        while (place > 0 && seconds[place - 1] == second) {
            place--;
        }
        return place;
    }

    /** Takes everything away. */
    public void clear() {
        size = 0;
    }

    private int checked(int place) {
        if (place >= size) {
            throw new IndexOutOfBoundsException("place %d of %d values".formatted(place, size));
        }
        return place;
    }
}
