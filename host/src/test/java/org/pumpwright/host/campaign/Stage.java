package org.pumpwright.host.campaign;

/** Parts of a run, as they can be told from the board's pins. */
enum Stage {
    /** Before the contactor was ever pulled. */
    SAFE(0),
    /** The contactor is pulled and has not proven itself yet; its feedback follows after 10 ms. */
    PROVING(0),
    /** Armed, nothing driven. */
    RESTING(1200),
    /** A drive is on its way up to a point of the first sweep. */
    RAMPING(90),
    /** A drive is held at a point of the first sweep. */
    DWELLING(1500),
    /** The duty has fallen for the first time: the way back down, and the first point once more. */
    COMING_BACK(4000);

    private final int longestMillis;

    Stage(int longestMillis) {
        this.longestMillis = longestMillis;
    }

    /** How long it surely lasts. */
    int longestMillis() {
        return longestMillis;
    }

    /** Whether it comes once for each point of the first sweep. */
    boolean comesForEachPoint() {
        return this == RAMPING || this == DWELLING;
    }
}
