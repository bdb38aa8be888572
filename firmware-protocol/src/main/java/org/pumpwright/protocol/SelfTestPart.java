package org.pumpwright.protocol;

import java.util.EnumSet;
import java.util.Set;

/** What a board can try of itself. Thread-safe. */
public enum SelfTestPart {
    /** The program memory's check. Locks the board when it fails. */
    PROGRAM_MEMORY(1, true),
    /** The working memory. Locks the board when it fails. */
    WORKING_MEMORY(2, true),
    /** The stored blobs' checks. */
    STORED_BLOBS(4, false),
    /** The converter. Locks the board when it fails. */
    CONVERTER(8, true),
    /** The contactor's feedback. */
    CONTACTOR_FEEDBACK(16, false),
    /** The clock. Locks the board when it fails. */
    CLOCK(32, true);

    /** The bits of all of them together. */
    static final int ALL_BITS = 0x3F;

    private final int bit;
    private final boolean locks;

    SelfTestPart(int bit, boolean locks) {
        this.bit = bit;
        this.locks = locks;
    }

    /** Its bit in {@link SelfTestResult}, in the detail of a {@link EventKind#LOCKED} event and of a refusal. */
    public int bit() {
        return bit;
    }

    /** Whether a self-test in which it failed locks the board. */
    public boolean locks() {
        return locks;
    }

    /** The parts whose bits are set; other bits are passed over. */
    public static Set<SelfTestPart> failedIn(int bits) {
        Set<SelfTestPart> failed = EnumSet.noneOf(SelfTestPart.class);
        for (SelfTestPart part : values()) {
            if ((bits & part.bit) != 0) {
                failed.add(part);
            }
        }
        return failed;
    }
}
