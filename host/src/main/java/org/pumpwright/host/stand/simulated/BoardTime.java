package org.pumpwright.host.stand.simulated;

/** The board's own time in ticks, which begins shortly before its roll-over. Confined to the run thread. */
final class BoardTime {
    static final long TICK_HZ = 2_000_000;

    private static final long TICK_NANOS = 1_000_000_000 / TICK_HZ;
    private static final long MILLI_NANOS = 1_000_000;
    private static final long START_TICKS = 0xFF80_0000L;
    private static final long MASK_U32 = 0xFFFF_FFFFL;

    private long nanos;
    private long startNanos;

    void millisecond() {
        nanos += MILLI_NANOS;
    }

    void restart() {
        startNanos = nanos;
    }

    /** Virtual time since the board was made; a reset does not touch it. */
    long nanos() {
        return nanos;
    }

    /** Board time now, u32. */
    long ticks() {
        return ticksAt(nanos);
    }

    /** Board time of a moment, u32. */
    long ticksAt(long atNanos) {
        return (START_TICKS + (atNanos - startNanos) / TICK_NANOS) & MASK_U32;
    }
}
