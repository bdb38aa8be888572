package org.pumpwright.host.run;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.stand.Stand;

/**
 * The person's way to stop a run. Pressing asks the board for safe at once, whatever the run is doing; the run then sees
 * it and ends. It is a convenience: the stand's own emergency stop does not need a program. Thread-safe.
 */
public final class StopButton {
    private volatile @Nullable String reason;
    private volatile @Nullable Stand stand;

    /** Stops the run, now or as soon as it starts. */
    public void press(String why) {
        reason = why;
        Stand running = stand;
        if (running != null) {
            running.makeSafe();
        }
    }

    /** Why it was pressed; empty while it was not. */
    public Optional<String> pressed() {
        return Optional.ofNullable(reason);
    }

    void connect(Stand running) {
        stand = running;
    }
}
