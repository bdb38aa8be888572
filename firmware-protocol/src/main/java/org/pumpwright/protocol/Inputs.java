package org.pumpwright.protocol;

/**
 * The safety inputs as the board reads them. Open and not wired look the same. Thread-safe.
 *
 * @param emergencyStopClosed whether the emergency-stop loop is closed
 * @param guardClosed whether the guard is closed
 */
public record Inputs(boolean emergencyStopClosed, boolean guardClosed) {
    private static final int EMERGENCY_STOP_BIT = 1;
    private static final int GUARD_BIT = 2;

    /** The bits on the wire, 0 to 3. */
    public int bits() {
        return (emergencyStopClosed ? EMERGENCY_STOP_BIT : 0) | (guardClosed ? GUARD_BIT : 0);
    }

    /** Whether nothing keeps the board from arming. */
    public boolean allClosed() {
        return emergencyStopClosed && guardClosed;
    }

    /**
     * The inputs with these bits.
     *
     * @throws FieldOutOfRange when another bit is set
     */
    public static Inputs ofBits(int bits) {
        FieldOutOfRange.check(1, "input bits", bits, 0, EMERGENCY_STOP_BIT | GUARD_BIT, "bits");
        return new Inputs((bits & EMERGENCY_STOP_BIT) != 0, (bits & GUARD_BIT) != 0);
    }

    static Inputs read(PayloadReader in) {
        in.group();
        return ofBits(in.u8());
    }
}
