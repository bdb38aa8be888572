package org.pumpwright.benchmarks.window;

import java.time.Duration;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.wire.Line;

/** A line with another one behind it, which does the work. As safe for threads as that one. */
abstract class LineBehind implements Line {
    private final Line line;

    LineBehind(Line line) {
        this.line = line;
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
        return line.receive(into, atMost);
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
