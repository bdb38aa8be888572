package org.pumpwright.protocol;

/**
 * The board's time without roll-over, in ticks since some moment before the first reading. Samples move it on; the times
 * that come with them are placed relative to it. Its rule for gaps is that of {@link RollOver}. Confined to one thread.
 */
public final class BoardClock {
    /** Board time after a reset: near its end, so that every host meets the roll-over soon. */
    public static final long START_TIME = 0xFF80_0000L;

    private static final long MASK = Unsigned.MAX_U32;

    private final double secondsPerTick;
    private final RollOver ticks = new RollOver();
    private long now = -1;

    /**
     * A clock that has not been set.
     *
     * @param tickHz the identity's tick rate, 1 to 4294967295 Hz
     * @throws IllegalArgumentException when the rate is outside its range
     */
    public BoardClock(long tickHz) {
        FieldOutOfRange.check(1, "tick rate", tickHz, 1, MASK, "Hz");
        secondsPerTick = 1.0 / tickHz;
    }

    /**
     * Moves the clock on to the time of a sample. One that is behind, or half the range or more ahead, leaves it.
     *
     * @param time u32 ticks
     * @return the clock's ticks, never less than before
     * @throws IllegalArgumentException when the time is no u32
     */
    public long advance(long time) {
        // The first time gets one whole range added, so that an edge from before the roll-over still counts from 0 up.
        now = ticks.advance(time) + MASK + 1;
        return now;
    }

    /**
     * The latest moment not after the clock that has this time: for the last edge that came with the newest sample.
     * Right for moments up to 4294967295 ticks (2147 s at 0.5 us) ago; so it holds only while the edge count has moved
     * since a sample that recent. A meter that stands still keeps the moment it was given when it last moved.
     *
     * @param time u32 ticks
     * @throws IllegalArgumentException when the time is no u32
     * @throws IllegalStateException when the clock was never advanced
     */
    public long before(long time) {
        Unsigned.checkU32(1, "board time", time, "ticks");
        return started() - ((now - time) & MASK);
    }

    /**
     * The moment nearest to the clock that has this time, before or after it: for an event, which may be sent before or
     * after a sample of about the same moment.
     *
     * @param time u32 ticks
     * @throws IllegalArgumentException when the time is no u32
     * @throws IllegalStateException when the clock was never advanced
     */
    public long near(long time) {
        Unsigned.checkU32(1, "board time", time, "ticks");
        return started() + (int) (time - now);
    }

    /** So many ticks in seconds. */
    public double seconds(long ticksElapsed) {
        return ticksElapsed * secondsPerTick;
    }

    /** Forgets the time, as after a reset of the board. */
    public void restart() {
        ticks.restart();
        now = -1;
    }

    private long started() {
        if (now < 0) {
            throw new IllegalStateException("the board clock has no time yet: advance it by a sample first");
        }
        return now;
    }
}
