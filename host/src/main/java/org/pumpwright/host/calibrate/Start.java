package org.pumpwright.host.calibrate;

/** How a run begins and ends. Thread-safe. */
public enum Start {
    /** The flow never stops; a diverter swings it into the bucket and out again and starts and stops the counting. */
    FLYING("flying start and finish"),
    /** A valve opens and shuts; everything from rest to rest is counted and caught. */
    STANDING("standing start and finish");

    private final String words;

    Start(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
