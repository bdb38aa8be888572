package org.pumpwright.protocol;

/**
 * One of the limits within which a board lets a stand be driven. Readings are left-justified: 65536 would be the
 * converter's reference. Thread-safe.
 */
public enum Limit {
    /** Supply amps that must not be exceeded for longer than {@link #SUPPLY_AMPS_TIME}. */
    SUPPLY_AMPS(0, "supply amps", Limit.READING, 0, Limit.MAX_READING, Strictness.LOWER),
    /** How long the supply amps may be exceeded. */
    SUPPLY_AMPS_TIME(1, "supply amps time", Limit.MILLIS, 0, 1000, Strictness.LOWER),
    /** How long a drive may be above 0 in one armed stretch. */
    RUN_TIME(2, "run time", Limit.MILLIS, 0, 7_200_000, Strictness.LOWER),
    /** Pressure that must not be exceeded for longer than {@link #PRESSURE_TIME}. */
    PRESSURE(3, "pressure", Limit.READING, 0, Limit.MAX_READING, Strictness.LOWER),
    /** How long the pressure may be exceeded. */
    PRESSURE_TIME(4, "pressure time", Limit.MILLIS, 0, 1000, Strictness.LOWER),
    /** Pressure above which a driven pump is taken to work against a closed line. */
    DEAD_HEAD_PRESSURE(5, "dead-head pressure", Limit.READING, 0, Limit.MAX_READING, Strictness.LOWER),
    /** How long a driven pump may work against a closed line. */
    DEAD_HEAD_TIME(6, "dead-head time", Limit.MILLIS, 0, 60_000, Strictness.LOWER),
    /** Supply amps below which a driven pump is taken to run dry. */
    DRY_AMPS(7, "dry amps", Limit.READING, 0, Limit.MAX_READING, Strictness.HIGHER),
    /** How long a driven pump may run dry. */
    DRY_TIME(8, "dry time", Limit.MILLIS, 0, 60_000, Strictness.LOWER),
    /** Volts at the pins that must not be exceeded for longer than {@link #VOLTS_TIME}. */
    VOLTS(9, "volts", Limit.READING, 0, Limit.MAX_READING, Strictness.LOWER),
    /** How long the volts may be exceeded. */
    VOLTS_TIME(10, "volts time", Limit.MILLIS, 0, 1000, Strictness.LOWER),
    /** How long an armed board waits for a sound host frame. */
    LINK_TIME_OUT(
            11,
            "link time-out",
            Limit.MILLIS,
            Timing.SHORTEST_LINK_TIMEOUT_MS,
            Timing.LONGEST_LINK_TIMEOUT_MS,
            Strictness.LOWER);

    /** Which way a limit becomes stricter. */
    public enum Strictness {
        /** A lower value is stricter. */
        LOWER,
        /** A higher value is stricter. */
        HIGHER
    }

    /** How many limits there are. */
    public static final int COUNT = 12;

    private static final String READING = "1/65536 of the reference";
    private static final String MILLIS = "ms";
    private static final long MAX_READING = 0xFFFF;
    private static final Limit[] BY_INDEX = values();

    private final int index;
    private final String words;
    private final String unit;
    private final long lowest;
    private final long highest;
    private final Strictness tighterIs;

    Limit(int index, String words, String unit, long lowest, long highest, Strictness tighterIs) {
        this.index = index;
        this.words = words;
        this.unit = unit;
        this.lowest = lowest;
        this.highest = highest;
        this.tighterIs = tighterIs;
    }

    /** Its number on the wire and its place in {@link Limits}, 0 to 11. */
    public int index() {
        return index;
    }

    /** Its name in plain words. */
    public String words() {
        return words;
    }

    /** What its value counts: milliseconds, or parts of the converter's reference. */
    public String unit() {
        return unit;
    }

    /** The lowest value it can have. */
    public long lowest() {
        return lowest;
    }

    /** The highest value it can have. */
    public long highest() {
        return highest;
    }

    /** Which way it becomes stricter. */
    public Strictness tighterIs() {
        return tighterIs;
    }

    /** The least strict value it can have. */
    public long widest() {
        return tighterIs == Strictness.LOWER ? highest : lowest;
    }

    /** Whether a value is less strict than the present one, so that a board refuses it. */
    public boolean wouldWiden(long value, long present) {
        return tighterIs == Strictness.LOWER ? value > present : value < present;
    }

    /**
     * The one with this number on the wire.
     *
     * @throws FieldOutOfRange when there is none
     */
    public static Limit ofIndex(int index) {
        FieldOutOfRange.check(1, "limit", index, 0, COUNT - 1L, "number of the limit");
        return BY_INDEX[index];
    }

    void check(int field, long value) {
        FieldOutOfRange.check(field, "limit " + words, value, lowest, highest, unit);
    }

    static Limit read(PayloadReader in) {
        in.group();
        return ofIndex(in.u8());
    }
}
