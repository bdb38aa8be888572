package org.pumpwright.protocol;

/**
 * The short name of a kind of board, such as {@code avr328}. Thread-safe.
 *
 * @param name 0 to 8 printable ASCII characters
 */
public record BoardKind(String name) {
    static final int LENGTH = 8;

    private static final int MASK = 0xFF;
    private static final char LOWEST = ' ';
    private static final char HIGHEST = '~';

    /** @throws FieldOutOfRange when the name is too long or holds another character */
    public BoardKind {
        FieldOutOfRange.check(1, "board kind length", name.length(), 0, LENGTH, "characters");
        for (int index = 0; index < name.length(); index++) {
            FieldOutOfRange.check(1, "board kind character", name.charAt(index), LOWEST, HIGHEST, "printable ASCII");
        }
    }

    /** The name. */
    @Override
    public String toString() {
        return name;
    }

    static BoardKind read(PayloadReader in) {
        in.group();
        long bytes = in.u64();
        StringBuilder name = new StringBuilder(LENGTH);
        // Only zeros may follow the first zero; one that is followed by more stays in the name, which is then refused.
        for (long left = bytes; left != 0; left >>>= Byte.SIZE) {
            name.append((char) (left & MASK));
        }
        return new BoardKind(name.toString());
    }

    void write(PayloadWriter out) {
        long bytes = 0;
        for (int index = name.length() - 1; index >= 0; index--) {
            bytes = bytes << Byte.SIZE | name.charAt(index);
        }
        out.u64(bytes);
    }
}
