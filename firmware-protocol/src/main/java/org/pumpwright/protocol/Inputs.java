package org.pumpwright.protocol;

/**
 * The inputs as the board reads them. Open and not wired look the same. Thread-safe.
 *
 * @param emergencyStopClosed whether the emergency-stop input is closed
 * @param guardClosed whether the guard is closed
 * @param levelClosed whether the tank's level is high enough
 * @param overrideReturned whether the unit's mechanical override is returned
 * @param contactorFeedbackClosed whether the contactor's feedback says that it has closed
 */
public record Inputs(
        boolean emergencyStopClosed,
        boolean guardClosed,
        boolean levelClosed,
        boolean overrideReturned,
        boolean contactorFeedbackClosed) {
    private static final int EMERGENCY_STOP_BIT = 1;
    private static final int GUARD_BIT = 2;
    private static final int LEVEL_BIT = 4;
    private static final int OVERRIDE_BIT = 8;
    private static final int FEEDBACK_BIT = 16;
    private static final int ALL_BITS = EMERGENCY_STOP_BIT | GUARD_BIT | LEVEL_BIT | OVERRIDE_BIT | FEEDBACK_BIT;

    /** One of each, so that a stream of samples makes none anew. */
    private static final Inputs[] BY_BITS = byBits();

    /** The bits on the wire, 0 to 31. */
    public int bits() {
        return bit(emergencyStopClosed, EMERGENCY_STOP_BIT)
                | bit(guardClosed, GUARD_BIT)
                | bit(levelClosed, LEVEL_BIT)
                | bit(overrideReturned, OVERRIDE_BIT)
                | bit(contactorFeedbackClosed, FEEDBACK_BIT);
    }

    /** Whether every input that arming needs is closed; the contactor's feedback is none of these. */
    public boolean allClosed() {
        return emergencyStopClosed && guardClosed && levelClosed && overrideReturned;
    }

    /** Whether nothing keeps the board from arming: every input closed, and the contactor known to be open. */
    public boolean letArm() {
        return allClosed() && !contactorFeedbackClosed;
    }

    /** The same inputs with another contactor feedback. */
    public Inputs withContactorFeedback(boolean closed) {
        return ofBits((bits() & ~FEEDBACK_BIT) | bit(closed, FEEDBACK_BIT));
    }

    /**
     * The inputs with these bits.
     *
     * @throws FieldOutOfRange when another bit is set
     */
    public static Inputs ofBits(int bits) {
        FieldOutOfRange.check(1, "input bits", bits, 0, ALL_BITS, "bits");
        return BY_BITS[bits];
    }

    static Inputs read(PayloadReader in) {
        in.group();
        return ofBits(in.u8());
    }

    private static int bit(boolean closed, int bit) {
        return closed ? bit : 0;
    }

    private static Inputs[] byBits() {
        Inputs[] all = new Inputs[ALL_BITS + 1];
        for (int bits = 0; bits <= ALL_BITS; bits++) {
            all[bits] = new Inputs(
                    (bits & EMERGENCY_STOP_BIT) != 0,
                    (bits & GUARD_BIT) != 0,
                    (bits & LEVEL_BIT) != 0,
                    (bits & OVERRIDE_BIT) != 0,
                    (bits & FEEDBACK_BIT) != 0);
        }
        return all;
    }
}
