package org.pumpwright.host.stand.wire;

import java.time.Duration;

/**
 * The host's times on the wire, by the line's clock. Thread-safe.
 *
 * @param keepAlive between two signs of life while armed
 * @param answer how long to wait for the answer to one frame
 * @param tries how often a frame is sent before the board is given up
 * @param hello how long a board may take to answer the first hello: opening a port may reset it
 * @param silence how long the samples may stay away
 * @param samplePeriodMillis the stream that is asked for
 */
public record WireTiming(
        Duration keepAlive, Duration answer, int tries, Duration hello, Duration silence, int samplePeriodMillis) {
    /** The protocol's own times; samples fifty times a second. */
    public static final WireTiming STANDARD = new WireTiming(
            Duration.ofMillis(250), Duration.ofMillis(200), 3, Duration.ofSeconds(3), Duration.ofMillis(500), 20);

    /** Shorter patience with ports that may have no board behind them. */
    public WireTiming withHello(Duration shorter) {
        return new WireTiming(keepAlive, answer, tries, shorter, silence, samplePeriodMillis);
    }
}
