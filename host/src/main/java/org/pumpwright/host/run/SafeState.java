package org.pumpwright.host.run;

/** What is known of the stand's state after a run. Thread-safe. */
public enum SafeState {
    /** The board itself said that it is safe. */
    CONFIRMED("the board says that it is safe"),
    /** The board is safe as far as it can be, and has locked itself: it let the contactor go, which stayed closed. */
    LOCKED("the board has locked itself: the contactor may be stuck. Switch the supply off before you touch the unit"),
    /** The board could not be heard. Its own link time-out makes it safe within a second, if it works. */
    NOT_CONFIRMED("the board could not be asked: press the emergency stop before you touch the unit");

    private final String words;

    SafeState(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
