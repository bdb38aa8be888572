package org.pumpwright.host.ui;

import java.time.Duration;
import java.time.InstantSource;
import java.util.Optional;

/**
 * Tells a barcode scanner from a person: it types at least four characters, each less than 50 ms after the one before, and then Enter.
 * Nobody types like that. (Common practice of scanners that act as a keyboard; no source for the figures.) JavaFX thread only.
 */
public final class ScanListener {
    private static final Duration LONGEST_GAP = Duration.ofMillis(50);
    private static final int SHORTEST = 4;

    private final InstantSource clock;
    private final StringBuilder typed = new StringBuilder();
    private long lastMillis = Long.MIN_VALUE;

    /** @param clock times the keys */
    public ScanListener(InstantSource clock) {
        this.clock = clock;
    }

    /**
     * Takes the next character that was typed.
     *
     * @return what was scanned, when this character ends it
     */
    public Optional<String> typed(char character) {
        long now = clock.millis();
        boolean quick = lastMillis != Long.MIN_VALUE && now - lastMillis < LONGEST_GAP.toMillis() && now >= lastMillis;
        lastMillis = now;
        if (!quick) {
            typed.setLength(0);
        }
        if (character == '\r' || character == '\n') {
            return end();
        }
        if (Character.isISOControl(character)) {
            typed.setLength(0);
        } else {
            typed.append(character);
        }
        return Optional.empty();
    }

    private Optional<String> end() {
        String whole = typed.toString();
        typed.setLength(0);
        lastMillis = Long.MIN_VALUE;
        return whole.length() < SHORTEST ? Optional.empty() : Optional.of(whole);
    }
}
