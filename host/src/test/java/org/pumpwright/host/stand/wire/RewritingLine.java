package org.pumpwright.host.stand.wire;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.FrameDecoder;
import org.pumpwright.protocol.FrameEncoder;
import org.pumpwright.protocol.Received;

/** A line on which what the board says is changed or lost on its way. Confined to the run thread. */
final class RewritingLine implements Line {
    private final Line line;
    private final Function<BoardMessage, Optional<BoardMessage>> change;
    private final List<byte[]> kept = new ArrayList<>();
    private final FrameDecoder decoder = FrameDecoder.synchronised(this::keep);

    RewritingLine(Line line, Function<BoardMessage, Optional<BoardMessage>> change) {
        this.line = line;
        this.change = change;
    }

    private void keep(Received received) {
        if (received instanceof Received.Good good && good.message() instanceof BoardMessage message) {
            change.apply(message).ifPresent(other -> kept.add(FrameEncoder.encode(other, good.sequence())));
        }
    }

    @Override
    public String name() {
        return "line that changes what it carries";
    }

    @Override
    public void send(byte[] bytes) throws StandException {
        line.send(bytes);
    }

    @Override
    public int receive(byte[] into, Duration atMost) throws StandException {
        decoder.receive(into, 0, line.receive(into, atMost));
        int count = 0;
        for (byte[] frame : kept) {
            System.arraycopy(frame, 0, into, count, frame.length);
            count += frame.length;
        }
        kept.clear();
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
