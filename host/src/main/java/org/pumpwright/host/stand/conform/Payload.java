package org.pumpwright.host.stand.conform;

import java.util.Arrays;

/** Bytes of a payload put together by hand, filled up with zeros. Confined to the run thread. */
final class Payload {
    private final byte[] bytes;
    private int at;

    private Payload(int length) {
        bytes = new byte[length];
    }

    static Payload of(int length) {
        return new Payload(length);
    }

    Payload u8(int value) {
        bytes[at++] = (byte) value;
        return this;
    }

    Payload u16(int value) {
        return u8(value).u8(value >> Byte.SIZE);
    }

    Payload u32(long value) {
        return u16((int) value).u16((int) (value >> Short.SIZE));
    }

    byte[] bytes() {
        return Arrays.copyOf(bytes, bytes.length);
    }
}
