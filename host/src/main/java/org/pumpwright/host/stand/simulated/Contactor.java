package org.pumpwright.host.stand.simulated;

import java.util.Optional;

/**
 * The contactor in the supply with its feedback contact: it closes and opens some milliseconds after its coil is told to.
 * For practice its feedback can be held open or closed, as by a broken wire or a welded contact. Confined to the run
 * thread.
 */
final class Contactor {
    private static final int MOVES_AFTER_MILLIS = 10;

    private boolean pulled;
    private boolean closed;
    private int millisToMove;
    private Optional<Boolean> held = Optional.empty();

    /** Gives the coil current or takes it away. */
    void pull(boolean on) {
        if (on != pulled) {
            pulled = on;
            millisToMove = MOVES_AFTER_MILLIS;
        }
    }

    void millisecond() {
        if (closed != pulled && --millisToMove <= 0) {
            closed = pulled;
        }
    }

    /** Whether current flows to the unit. */
    boolean closed() {
        return closed;
    }

    /** What the feedback contact says. */
    boolean feedbackClosed() {
        return held.orElse(closed);
    }

    /** Holds the feedback, or lets it follow the contactor again when empty. */
    void holdFeedback(Optional<Boolean> closedOrOpen) {
        held = closedOrOpen;
    }
}
