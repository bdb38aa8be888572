package org.pumpwright.protocol;

import java.util.HexFormat;

/**
 * Eight bytes that differ between boards; all zeros where the maker of the board gave none. Thread-safe.
 *
 * @param value the bytes in the order of the line, the first one the most significant
 */
public record UniqueId(long value) {
    /** The id of a board that was given none. */
    public static final UniqueId NONE = new UniqueId(0);

    static final int LENGTH = 8;

    /** Whether the board was given an id. */
    public boolean isGiven() {
        return value != 0;
    }

    /**
     * The id of its {@link #toString} form.
     *
     * @throws IllegalArgumentException when the text is not 16 hexadecimal digits
     */
    public static UniqueId parse(String hex) {
        if (hex.length() != 2 * LENGTH) {
            throw new IllegalArgumentException("unique id \"" + hex + "\" is not 16 hexadecimal digits");
        }
        return new UniqueId(HexFormat.fromHexDigitsToLong(hex));
    }

    /** The bytes in the order of the line, as 16 lower-case hexadecimal digits. */
    @Override
    public String toString() {
        return HexFormat.of().toHexDigits(value);
    }

    static UniqueId read(PayloadReader in) {
        return new UniqueId(Long.reverseBytes(in.u64()));
    }

    void write(PayloadWriter out) {
        out.u64(Long.reverseBytes(value));
    }
}
