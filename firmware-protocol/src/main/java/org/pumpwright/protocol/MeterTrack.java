package org.pumpwright.protocol;

/**
 * Makes of one meter's readings a count that only grows and a moment of its last edge that can be subtracted from any
 * other: between any two readings the flow is exact, whatever was lost between them. The clock must have been advanced
 * to the sample that a reading came with. Confined to one thread.
 */
public final class MeterTrack {
    private final BoardClock clock;
    private final RollOver edges = new RollOver();
    private long count = -1;
    private long lastEdge;
    private boolean hasEdge;

    /** A meter that was not read yet, of the board that has this clock. */
    public MeterTrack(BoardClock clock) {
        this.clock = clock;
    }

    /** Takes the reading of a whole sample. */
    public void advance(MeterCount reading) {
        boolean untouched = reading.count() == MeterCount.START_COUNT && reading.lastEdge() == 0;
        take(edges.advance(reading.count()), reading.lastEdge(), untouched);
    }

    /** Takes the reading of a short sample. */
    public void advance(ShortCount reading) {
        boolean untouched = reading.count() == (MeterCount.START_COUNT & Unsigned.MAX_U16) && reading.lastEdge() == 0;
        take(edges.advanceLow(reading.count()), reading.lastEdge(), untouched);
    }

    /** The count, never less than before; only differences mean anything. */
    public long count() {
        return count;
    }

    /** Whether the meter has had an edge. */
    public boolean hasEdge() {
        return hasEdge;
    }

    /**
     * The moment of the last edge on the clock, ticks. It was placed when the count last moved: the time of a meter that
     * stands still could be read as another moment later.
     *
     * @throws IllegalStateException when there was no edge
     */
    public long lastEdge() {
        if (!hasEdge) {
            throw new IllegalStateException("the meter has had no edge yet");
        }
        return lastEdge;
    }

    /** Forgets everything, as after a reset of the board. */
    public void restart() {
        edges.restart();
        count = -1;
        hasEdge = false;
    }

    private void take(long next, long edgeTime, boolean untouched) {
        if (next != count) {
            hasEdge = count >= 0 || !untouched;
            lastEdge = hasEdge ? clock.before(edgeTime) : 0;
            count = next;
        }
    }
}
