package org.pumpwright.host.curve;

/** How a curve goes between its points. Thread-safe. */
public enum Interpolation {
    /** Straight lines: curves of old, whose verdicts must not change. */
    LINEAR("linear"),
    /** Cubic without overshoot, see {@link MonotoneCubic}: a healthy curve bends, and a chord lies beside it. */
    MONOTONE("monotone");

    private final String word;

    Interpolation(String word) {
        this.word = word;
    }

    /** The word in files. */
    public String word() {
        return word;
    }
}
