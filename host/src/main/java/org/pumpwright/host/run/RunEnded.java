package org.pumpwright.host.run;

import org.pumpwright.host.trace.Ending;

/** Leaves the points of a plan early; carries the ending to the one place where runs end. */
final class RunEnded extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Ending ending;

    RunEnded(Ending.Kind kind, String reason) {
        super(reason);
        ending = new Ending(kind, reason);
    }

    Ending ending() {
        return ending;
    }
}
