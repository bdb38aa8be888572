package org.pumpwright.host.plant;

/** Numbers of the random streams that only the 12 V pump uses; {@link Streams} has the common ones. Thread-safe. */
final class PumpStreams {

    static final long SWITCH = -101;
    static final long LOOSE = -102;
    static final long CHAMBERS = -103;
    static final long RIPPLE_NOISE = -104;

    private PumpStreams() {}
}
