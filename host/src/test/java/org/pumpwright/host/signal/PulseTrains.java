package org.pumpwright.host.signal;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.LongStream;

/** Makes what a board would report of given edges. */
final class PulseTrains {
    private PulseTrains() {}

    /** Samples every period of edges at these times (ascending, s), from 0 to the end. */
    static PulseTrain sampled(double[] edgeSeconds, double periodSeconds, double endSeconds) {
        int samples = (int) Math.round(endSeconds / periodSeconds) + 1;
        long[] edges = new long[samples];
        long[] last = new long[samples];
        int passed = 0;
        for (int i = 0; i < samples; i++) {
            while (passed < edgeSeconds.length && edgeSeconds[passed] <= i * periodSeconds) {
                passed++;
            }
            edges[i] = passed;
            last[i] = passed == 0 ? 0 : nanos(edgeSeconds[passed - 1]);
        }
        return PulseTrain.of(edges, last);
    }

    /** Every edge known. */
    static PulseTrain whole(double[] edgeSeconds) {
        long[] edges = LongStream.range(0, edgeSeconds.length + 1L).toArray();
        long[] last = new long[edges.length];
        for (int i = 0; i < edgeSeconds.length; i++) {
            last[i + 1] = nanos(edgeSeconds[i]);
        }
        return PulseTrain.of(edges, last);
    }

    /** Edges at i / hertz plus a deviation, from one period after 0. */
    static double[] even(double hertz, int count, DoubleUnaryOperator deviation) {
        double[] seconds = new double[count];
        for (int i = 0; i < count; i++) {
            seconds[i] = (i + 1) / hertz + deviation.applyAsDouble(i);
        }
        return seconds;
    }

    private static long nanos(double seconds) {
        return Math.round(seconds * 1e9);
    }
}
