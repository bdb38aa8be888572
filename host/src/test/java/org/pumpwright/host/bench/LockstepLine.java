package org.pumpwright.host.bench;

import java.time.Duration;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.wire.Line;

/** A line whose clock is the board's, to a board that waits for its host. */
final class LockstepLine implements Line {
    /** Short by the wall, because the board's time stands still while the host waits for long. */
    private static final Duration GLANCE = Duration.ofMillis(2);

    private final Line line;
    private final Lockstep step;

    LockstepLine(Line line, Lockstep step) {
        this.line = line;
        this.step = step;
    }

    @Override
    public String name() {
        return line.name();
    }

    @Override
    public void send(byte[] bytes) throws StandException {
        step.hostWaitsWhileAway();
        step.hostSends(bytes.length);
        line.send(bytes);
    }

    @Override
    public int receive(byte[] into, Duration atMost) throws StandException {
        step.hostWaitsWhileAway();
        int count = line.receive(into, GLANCE);
        if (count > 0) {
            step.hostHeard();
        } else {
            step.hostHeardNothing(GLANCE.toNanos() / 1000);
        }
        return count;
    }

    @Override
    public long nanoTime() {
        return step.boardNanos();
    }

    @Override
    public void close() {
        step.hostLeft();
        line.close();
    }
}
