package org.pumpwright.host.rule;

import java.util.Optional;

/**
 * Which readings of a run a rule speaks of. Thread-safe.
 *
 * @param name the reading's name, or its beginning
 * @param begins true when every reading whose name begins so is meant, e.g. all times of {@code volts, time 1 of 3}
 * @param step the plan's step; empty for any
 */
public record ReadingName(String name, boolean begins, Optional<String> step) {
    /** Whether a reading with this name, of this step, is meant. */
    public boolean fits(String readingStep, String readingName) {
        boolean named = begins ? readingName.startsWith(name) : readingName.equals(name);
        return named && step.map(readingStep::equals).orElse(true);
    }
}
