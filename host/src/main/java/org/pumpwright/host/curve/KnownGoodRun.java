package org.pumpwright.host.curve;

/**
 * One run of a known-good unit. Thread-safe.
 *
 * @param serial tells the units apart
 * @param readings what the unit did in this run
 */
public record KnownGoodRun(String serial, KnownGoodUnit readings) {
    public KnownGoodRun {
        if (serial.isBlank()) {
            throw new IllegalArgumentException("a known-good run has no serial number, its unit cannot be told");
        }
    }
}
