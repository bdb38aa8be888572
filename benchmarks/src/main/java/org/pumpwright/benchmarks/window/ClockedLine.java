package org.pumpwright.benchmarks.window;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.wire.Line;

/** A line that tells other threads how late it is on its clock. As safe for threads as the line. */
final class ClockedLine implements Line {
    private final Line line;
    private final AtomicLong nanos;

    /** @param nanos follows the line's clock */
    ClockedLine(Line line, AtomicLong nanos) {
        this.line = line;
        this.nanos = nanos;
    }

    @Override
    public String name() {
        return line.name();
    }

    @Override
    public void send(byte[] bytes) throws StandException {
        line.send(bytes);
    }

    @Override
    public int receive(byte[] into, Duration atMost) throws StandException {
        int count = line.receive(into, atMost);
        nanos.set(line.nanoTime());
        return count;
    }

    @Override
    public long nanoTime() {
        return line.nanoTime();
    }

    @Override
    public void close() {
        line.close();
    }
}
