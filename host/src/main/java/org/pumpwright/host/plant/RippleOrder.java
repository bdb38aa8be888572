package org.pumpwright.host.plant;

/**
 * What fast series is asked for. Thread-safe.
 *
 * @param duty drive duty 0..1
 * @param seconds length
 * @param samplesPerSecond rate
 */
record RippleOrder(double duty, double seconds, double samplesPerSecond) {

    RippleOrder {
        Range.check("duty", duty, 0, 1, "");
        Range.check("length of the series", seconds, 0.01, 60, "s");
        Range.check("rate of the series", samplesPerSecond, 100, 100_000, "Hz");
    }

    int samples() {
        return (int) Math.round(seconds * samplesPerSecond);
    }
}
