package org.pumpwright.protocol.line;

import java.util.Objects;

/**
 * CRC-16/IBM-3740: polynomial 1021h, start FFFFh, most significant bit first, no final change. Its check value, the CRC
 * of the nine ASCII digits {@code 123456789}, is 29B1h in the catalogue of parametrised CRC algorithms. Thread-safe.
 */
public final class Crc16 {
    /** The value before the first byte. */
    public static final int START = 0xFFFF;

    private static final int POLYNOMIAL = 0x1021;

    /** What one byte in the upper half of the register turns into while eight bits are shifted out. */
    private static final char[] AFTER_ONE = firstTable();

    /** The same with one further zero byte behind it, so that two bytes can be looked up at the same time. */
    private static final char[] AFTER_TWO = nextTable(AFTER_ONE);

    private static final char[] AFTER_THREE = nextTable(AFTER_TWO);
    private static final char[] AFTER_FOUR = nextTable(AFTER_THREE);

    private Crc16() {}

    /**
     * The CRC of a part of an array.
     *
     * @throws IndexOutOfBoundsException when the part is not within the array
     */
    public static int of(byte[] bytes, int offset, int length) {
        return update(START, bytes, offset, length);
    }

    /**
     * Goes on with a CRC over further bytes.
     *
     * @param crc {@link #START} or what an earlier call returned
     * @return the CRC, 0 to FFFFh
     * @throws IndexOutOfBoundsException when the part is not within the array
     */
    public static int update(int crc, byte[] bytes, int offset, int length) {
        Objects.checkFromIndexSize(offset, length, bytes.length);
        int end = offset + length;
        int at = offset;
        int sum = crc & 0xFFFF;
        // Four bytes a turn: the look-ups do not wait for each other (slicing, Kounavis and Berry 2005, from memory).
        for (; at <= end - 4; at += 4) {
            sum = AFTER_FOUR[(sum >>> 8) ^ (bytes[at] & 0xFF)]
                    ^ AFTER_THREE[(sum & 0xFF) ^ (bytes[at + 1] & 0xFF)]
                    ^ AFTER_TWO[bytes[at + 2] & 0xFF]
                    ^ AFTER_ONE[bytes[at + 3] & 0xFF];
        }
        for (; at < end; at++) {
            sum = ((sum << 8) & 0xFFFF) ^ AFTER_ONE[(sum >>> 8) ^ (bytes[at] & 0xFF)];
        }
        return sum;
    }

    private static char[] firstTable() {
        char[] table = new char[256];
        for (int high = 0; high < table.length; high++) {
            int register = high << 8;
            for (int bit = 0; bit < 8; bit++) {
                register = (register & 0x8000) == 0 ? register << 1 : (register << 1) ^ POLYNOMIAL;
            }
            table[high] = (char) register;
        }
        return table;
    }

    private static char[] nextTable(char[] previous) {
        char[] table = new char[256];
        for (int high = 0; high < table.length; high++) {
            int register = previous[high];
            table[high] = (char) ((register << 8) ^ AFTER_ONE[register >>> 8]);
        }
        return table;
    }
}
