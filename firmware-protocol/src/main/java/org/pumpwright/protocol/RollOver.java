package org.pumpwright.protocol;

/**
 * Makes one long count of a u32 that rolls over. The rule: of two readings less than half the range (2147483648) apart,
 * going forward, the later one is that much ahead. A reading that would be half the range or more ahead can't be told
 * from one that is behind; it leaves the count where it is, so the count never falls. Readings must therefore come more
 * often than every half range: 1073 s for ticks of 0.5 us. Confined to one thread.
 */
public final class RollOver {
    private static final long HALF_RANGE = 1L << 31;
    private static final long MASK = Unsigned.MAX_U32;

    private long count = -1;
    private long behind;

    /**
     * Takes the next reading.
     *
     * @param reading u32; the first one is the count itself
     * @return the count, never less than before
     * @throws IllegalArgumentException when the reading is no u32
     */
    public long advance(long reading) {
        Unsigned.checkU32(1, "reading", reading, "u32");
        if (count < 0) {
            count = reading;
            return count;
        }
        long ahead = (reading - count) & MASK;
        if (ahead < HALF_RANGE) {
            count += ahead;
        } else {
            behind++;
        }
        return count;
    }

    /** Forgets everything, as after a reset of the board: the next reading is the count itself. */
    public void restart() {
        count = -1;
        behind = 0;
    }

    /** How many readings were behind the one before, and left the count where it was. */
    public long behind() {
        return behind;
    }
}
