package org.pumpwright.protocol.line;

/** The check of a frame by polynomial division, bit by bit and without a table, straight from its definition. */
public final class SlowCrc {
    private SlowCrc() {}

    /** The CRC of the first so many bytes. */
    public static int of(byte[] bytes, int length) {
        int register = 0xFFFF;
        for (int index = 0; index < length; index++) {
            for (int bit = 7; bit >= 0; bit--) {
                int in = bytes[index] >> bit & 1;
                int out = register >> 15 & 1;
                register = register << 1 & 0xFFFF;
                if (in != out) {
                    register ^= 0x1021;
                }
            }
        }
        return register;
    }
}
