package org.pumpwright.benchmarks.line;

import java.time.Duration;
import java.util.Optional;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.stand.StandSignal.Measured;
import org.pumpwright.host.stand.wire.LinkCounts;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.host.trace.Sample;

/**
 * What a line carried in so many seconds of the board's time. Thread-safe.
 *
 * @param samples samples after the first one
 * @param periods the board's time from the first to the last sample, in periods: as many samples should have come
 * @param edges edges of the first meter from the first to the last sample
 * @param link frames missing and broken
 * @param boardSeconds the board's time from the first to the last sample, s
 * @param wallSeconds how long that took, s
 */
record Carried(long samples, long periods, long edges, LinkCounts link, double boardSeconds, double wallSeconds) {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private static final double NANOS = 1e9;

    /** Opens, arms and drives the stand, and takes its samples for so long. */
    static Carried by(WireStand stand, int periodMillis, double seconds) throws StandException {
        stand.open();
        stand.arm();
        stand.drive(0, Duty.ofPercent(20), 0.5);
        Sample first = sample(stand);
        long began = System.nanoTime();
        Sample last = first;
        long count = 0;
        while (last.boardSeconds() < first.boardSeconds() + seconds) {
            last = sample(stand);
            count++;
        }
        double boardSeconds = last.boardSeconds() - first.boardSeconds();
        return new Carried(
                count,
                Math.round(boardSeconds * 1000 / periodMillis),
                last.meters().get(0).edges() - first.meters().get(0).edges(),
                stand.link(),
                boardSeconds,
                (System.nanoTime() - began) / NANOS);
    }

    private static Sample sample(WireStand stand) throws StandException {
        while (true) {
            Optional<StandSignal> signal = stand.await(PATIENCE);
            if (signal.isPresent() && signal.get() instanceof Measured measured) {
                return measured.sample();
            }
        }
    }
}
