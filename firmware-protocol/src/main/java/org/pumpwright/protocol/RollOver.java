package org.pumpwright.protocol;

/**
 * Makes one long count of a u32 that rolls over. The rule: of two readings less than half the range (2147483648) apart,
 * going forward, the later one is that much ahead. A reading that would be half the range or more ahead can't be told
 * from one that is behind; it leaves the count where it is, so the count never falls. Readings must therefore come more
 * often than every half range: 1073 s for ticks of 0.5 us. Readings of the low half alone are taken too, in any order
 * with whole ones, by the same rule with the half of their own range (32768). Confined to one thread.
 */
public final class RollOver {
    private static final long MASK = Unsigned.MAX_U32;
    private static final long HALF_RANGE = 1L << 31;
    private static final long LOW_MASK = Unsigned.MAX_U16;
    private static final long LOW_HALF_RANGE = 1L << 15;

    private long count = -1;
    private long newest;
    private boolean onlyLowKnown;
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
            newest = reading;
        } else if (!onlyLowKnown) {
            step((reading - newest) & MASK, HALF_RANGE);
        } else if (step((reading - newest) & LOW_MASK, LOW_HALF_RANGE)) {
            newest = reading;
            onlyLowKnown = false;
        }
        return count;
    }

    /**
     * Takes the low half of the next reading.
     *
     * @param reading u16; when it is the first one, it is the count itself
     * @return the count, never less than before
     * @throws IllegalArgumentException when the reading is no u16
     */
    public long advanceLow(int reading) {
        Unsigned.checkU16(1, "reading", reading, "u16");
        if (count < 0) {
            count = reading;
            newest = reading;
            onlyLowKnown = true;
        } else {
            step((reading - newest) & LOW_MASK, LOW_HALF_RANGE);
        }
        return count;
    }

    /** Forgets everything, as after a reset of the board: the next reading is the count itself. */
    public void restart() {
        count = -1;
        newest = 0;
        onlyLowKnown = false;
        behind = 0;
    }

    /** How many readings were behind the one before, and left the count where it was. */
    public long behind() {
        return behind;
    }

    private boolean step(long ahead, long halfRange) {
        if (ahead >= halfRange) {
            behind++;
            return false;
        }
        count += ahead;
        newest = (newest + ahead) & MASK;
        return true;
    }
}
