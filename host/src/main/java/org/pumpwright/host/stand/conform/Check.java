package org.pumpwright.host.stand.conform;

import org.pumpwright.host.stand.StandException;

/**
 * One thing that the protocol demands, and how it is tried. Thread-safe.
 *
 * @param name in plain words, what a conforming board does; unique
 * @param section of the specification that demands it
 * @param body tries it
 */
record Check(String name, String section, Body body) {
    /** Tries one thing on a board that is safe and quiet. */
    @FunctionalInterface
    interface Body {
        /**
         * The evidence that the demand was met.
         *
         * @throws Broken when it was not
         * @throws NotPossible when it can't be tried here
         * @throws StandException when the line is lost
         */
        String tried(Trial trial) throws Broken, NotPossible, StandException;
    }
}
