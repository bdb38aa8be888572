package org.pumpwright.benchmarks.window;

import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.serial.FrameWritten;
import org.pumpwright.host.stand.wire.Line;

/** A line whose sent frames somebody reads along. As safe for threads as the line. */
final class ListenedLine extends LineBehind {
    private final FrameWritten listener;

    ListenedLine(Line line, FrameWritten listener) {
        super(line);
        this.listener = listener;
    }

    @Override
    public void send(byte[] bytes) throws StandException {
        super.send(bytes);
        listener.written(bytes, System.nanoTime());
    }
}
