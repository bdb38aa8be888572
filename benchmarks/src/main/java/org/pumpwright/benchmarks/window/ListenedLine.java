package org.pumpwright.benchmarks.window;

import java.time.Duration;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.serial.FrameWritten;
import org.pumpwright.host.stand.wire.Line;

/** A line whose sent frames somebody reads along. As safe for threads as the line. */
final class ListenedLine implements Line {
    private final Line line;
    private final FrameWritten listener;

    ListenedLine(Line line, FrameWritten listener) {
        this.line = line;
        this.listener = listener;
    }

    @Override
    public String name() {
        return line.name();
    }

    @Override
    public void send(byte[] bytes) throws StandException {
        line.send(bytes);
        listener.written(bytes, System.nanoTime());
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
