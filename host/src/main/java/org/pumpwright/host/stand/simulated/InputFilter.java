package org.pumpwright.host.stand.simulated;

/** A contact that counts as changed when two readings in a row agree. Confined to the run thread. */
final class InputFilter {
    private boolean wired = true;
    private boolean before = true;
    private boolean agreed = true;

    /** What the contact is from now on. */
    void set(boolean closed) {
        wired = closed;
    }

    void read() {
        if (wired == before) {
            agreed = wired;
        }
        before = wired;
    }

    boolean closed() {
        return agreed;
    }
}
