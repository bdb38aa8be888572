package org.pumpwright.protocol;

/** Puts little-endian fields into a frame one after the other. Confined to the encoder's call. */
final class PayloadWriter {
    private final byte[] bytes;
    private int at;

    PayloadWriter(byte[] bytes) {
        this.bytes = bytes;
    }

    /** The caller's array, in which the fields are put. */
    byte[] bytes() {
        return bytes;
    }

    /** How many bytes are written. */
    int length() {
        return at;
    }

    void u8(int value) {
        bytes[at++] = (byte) value;
    }

    void u16(int value) {
        u8(value);
        u8(value >> Byte.SIZE);
    }

    void u32(long value) {
        i32((int) value);
    }

    void i32(int value) {
        u16(value);
        u16(value >> Short.SIZE);
    }

    void u64(long value) {
        u32(value);
        u32(value >> Integer.SIZE);
    }

    void octets(Octets more) {
        at += more.copyTo(bytes, at);
    }

    void raw(byte[] more) {
        System.arraycopy(more, 0, bytes, at, more.length);
        at += more.length;
    }
}
