package org.pumpwright.host.stand.conform;

import java.time.Duration;
import org.pumpwright.host.stand.StandException;

/** Makes things happen to a board: a person at the stand, or a test board's own controls. Confined to the run thread. */
public interface Provoker {
    /** Nobody is there. */
    Provoker NONE = new Provoker() {
        @Override
        public boolean can(Provocation.Cause cause) {
            return false;
        }

        @Override
        public void provoke(Provocation what) {
            throw new UnsupportedOperationException("nobody is there to do it: " + what.command());
        }

        @Override
        public Duration patience() {
            return Duration.ZERO;
        }
    };

    /** Whether it can be done here. */
    boolean can(Provocation.Cause cause);

    /**
     * Does it, or asks for it; returns at once.
     *
     * @throws StandException when the test board is gone
     * @throws UnsupportedOperationException when it {@link #can}'t be done here
     */
    void provoke(Provocation what) throws StandException;

    /** How long it may take until it happens. */
    Duration patience();

    /** Whether nothing but a toy can move: then drives above the usual 10 % are allowed. */
    default boolean toy() {
        return false;
    }
}
