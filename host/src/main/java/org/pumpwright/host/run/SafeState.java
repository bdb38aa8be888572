package org.pumpwright.host.run;

/** What is known of the stand's state after a run. Thread-safe. */
public enum SafeState {
    /** The board itself said that it is safe. */
    CONFIRMED("the board says that it is safe"),
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
