package org.pumpwright.host.stand.wire;

import java.time.Duration;
import org.pumpwright.protocol.SampleKind;
import org.pumpwright.protocol.Stream;

/**
 * The host's times on the wire, by the line's clock, and the stream of samples it asks for. Thread-safe.
 *
 * @param keepAlive between two signs of life while armed
 * @param answer how long to wait for the answer to one frame
 * @param tries how often a frame is sent before the board is given up
 * @param hello how long a board may take to answer the first hello: opening a port may reset it
 * @param silence how long the samples may stay away, longer than their period
 * @param samplePeriodMillis the period of the samples, 1 to 1000 ms; what a line holds without loss is longer, see the
 *     protocol's page
 * @param sampleKind whole samples, or short ones, which need little more than half the line and tell of each analogue
 *     channel the mean only: least and most are the mean then
 */
public record WireTiming(
        Duration keepAlive,
        Duration answer,
        int tries,
        Duration hello,
        Duration silence,
        int samplePeriodMillis,
        SampleKind sampleKind) {
    /** The protocol's own times; whole samples fifty times a second. */
    public static final WireTiming STANDARD = new WireTiming(
            Duration.ofMillis(250), Duration.ofMillis(200), 3, Duration.ofSeconds(3), Duration.ofMillis(500), 20);

    /** @throws IllegalArgumentException when the period is outside its range, or not shorter than the silence */
    public WireTiming {
        if (samplePeriodMillis < Stream.SHORTEST_PERIOD_MS || samplePeriodMillis > Stream.LONGEST_PERIOD_MS) {
            throw new IllegalArgumentException("the sample period is %d ms, it must be %d to %d ms"
                    .formatted(samplePeriodMillis, Stream.SHORTEST_PERIOD_MS, Stream.LONGEST_PERIOD_MS));
        }
        if (silence.toMillis() <= samplePeriodMillis) {
            throw new IllegalArgumentException(
                    "samples may stay away for %d ms, that must be more than their period of %d ms"
                            .formatted(silence.toMillis(), samplePeriodMillis));
        }
    }

    /** Times with whole samples. */
    public WireTiming(
            Duration keepAlive, Duration answer, int tries, Duration hello, Duration silence, int samplePeriodMillis) {
        this(keepAlive, answer, tries, hello, silence, samplePeriodMillis, SampleKind.WHOLE);
    }

    /** Shorter patience with ports that may have no board behind them. */
    public WireTiming withHello(Duration shorter) {
        return new WireTiming(keepAlive, answer, tries, shorter, silence, samplePeriodMillis, sampleKind);
    }

    /** The same times with another stream of samples. */
    public WireTiming withSamples(int everyMillis, SampleKind kind) {
        return new WireTiming(keepAlive, answer, tries, hello, silence, everyMillis, kind);
    }

    /** The stream that is asked for. */
    Stream stream() {
        return new Stream(samplePeriodMillis, sampleKind);
    }
}
