package org.pumpwright.protocol;

import java.util.StringJoiner;

/**
 * What reset the board; several causes can be set together. Thread-safe.
 *
 * @param bits bit 0 power-on, 1 external, 2 brown-out, 3 watchdog; 0 unknown
 */
public record ResetCause(int bits) {
    /** The supply came up. */
    public static final int POWER_ON = 1;

    /** The reset pin was pulled, as by opening a serial port. */
    public static final int EXTERNAL = 2;

    /** The supply sagged. */
    public static final int BROWN_OUT = 4;

    /** The firmware hung. */
    public static final int WATCHDOG = 8;

    /** @throws FieldOutOfRange when another bit is set */
    public ResetCause {
        FieldOutOfRange.check(1, "reset cause", bits, 0, POWER_ON | EXTERNAL | BROWN_OUT | WATCHDOG, "bits");
    }

    /** Whether this cause, one of the constants, is among the bits. */
    public boolean has(int cause) {
        return (bits & cause) != 0;
    }

    /** The causes in plain words, such as {@code power-on and external}. */
    public String describe() {
        StringJoiner words = new StringJoiner(" and ").setEmptyValue("unknown");
        name(words, POWER_ON, "power-on");
        name(words, EXTERNAL, "external");
        name(words, BROWN_OUT, "brown-out");
        name(words, WATCHDOG, "watchdog");
        return words.toString();
    }

    private void name(StringJoiner words, int cause, String word) {
        if (has(cause)) {
            words.add(word);
        }
    }

    static ResetCause read(PayloadReader in) {
        in.group();
        return new ResetCause(in.u8());
    }
}
