package org.pumpwright.benchmarks.window;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.wire.Line;

/** A line that tells other threads how late it is on its clock. As safe for threads as the line. */
final class ClockedLine extends LineBehind {
    private final AtomicLong nanos;

    /** @param nanos follows the line's clock */
    ClockedLine(Line line, AtomicLong nanos) {
        super(line);
        this.nanos = nanos;
    }

    @Override
    public int receive(byte[] into, Duration atMost) throws StandException {
        int count = super.receive(into, atMost);
        nanos.set(nanoTime());
        return count;
    }
}
