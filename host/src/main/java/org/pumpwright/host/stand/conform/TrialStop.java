package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.stand.wire.Line;
import org.pumpwright.protocol.FrameEncoder;
import org.pumpwright.protocol.MakeSafe;

/**
 * The person's way to stop a trial. Pressing asks the board for safe at once, past everything that the script is doing; the script
 * then sees it and ends. It is a convenience: the stand's own emergency stop does not need a program. Thread-safe.
 */
public final class TrialStop {
    /** How soon a script that waits for the board sees that it was pressed. */
    private static final Duration GLANCE = Duration.ofMillis(50);

    private volatile @Nullable String reason;
    private volatile @Nullable Line line;
    private volatile boolean leaving;
    private volatile boolean safe;

    /** Stops the trial, now or as soon as it begins. Neither blocks nor throws. */
    public void press(String why) {
        reason = why;
        Line open = line;
        if (open != null) {
            askForSafe(open);
        }
    }

    private static void askForSafe(Line open) {
        try {
            open.send(FrameEncoder.encode(new MakeSafe(), 0));
        } catch (StandException e) {
            // The line is gone: the board makes itself safe by its own time-out, and the script sees the same trouble.
            System.getLogger(TrialStop.class.getName()).log(System.Logger.Level.DEBUG, "STOP", e);
        }
    }

    /** Why it was pressed; empty while it was not. */
    public Optional<String> pressed() {
        return Optional.ofNullable(reason);
    }

    /** Whether the board said after a stop that it is safe. */
    public boolean safe() {
        return safe;
    }

    /** From here on the board may be asked for safe in spite of the stop. */
    void leave() {
        leaving = true;
    }

    void left(boolean confirmed) {
        safe = confirmed;
    }

    /** The same line, but of no more use once this is pressed. */
    Line on(Line open) {
        line = open;
        return new Watched(open);
    }

    private void check(String name) throws StandException {
        String why = reason;
        if (why != null && !leaving) {
            throw new StandException(Trouble.INTERRUPTED, name, "%s: the trial was stopped: %s".formatted(name, why));
        }
    }

    /** Looks up from its waiting now and then. */
    private final class Watched implements Line {
        private final Line line;

        Watched(Line line) {
            this.line = line;
        }

        @Override
        public String name() {
            return line.name();
        }

        @Override
        public void send(byte[] bytes) throws StandException {
            check(name());
            line.send(bytes);
        }

        @Override
        public int receive(byte[] into, Duration atMost) throws StandException {
            check(name());
            return line.receive(into, atMost.compareTo(GLANCE) > 0 ? GLANCE : atMost);
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
}
