package org.pumpwright.protocol;

/**
 * Takes little-endian fields from a payload one after the other and counts them, so that a field out of range can be
 * named by its number. The payload's length was checked before. Confined to the decoder's thread.
 */
final class PayloadReader {
    private byte[] bytes = new byte[0];
    private int at;
    private int end;
    private int fieldsRead;
    private int fieldsBeforeGroup;

    /** Begins a payload. */
    void begin(byte[] payload, int offset, int length) {
        bytes = payload;
        at = offset;
        end = offset + length;
        fieldsRead = 0;
        fieldsBeforeGroup = 0;
    }

    /** The fields from here on belong to a part of the message that checks and numbers them on its own. */
    void group() {
        fieldsBeforeGroup = fieldsRead;
    }

    /** What is checked from here on is the whole message. */
    void whole() {
        fieldsBeforeGroup = 0;
    }

    /** The number of the offending field in the whole message, from 1. */
    int numberInMessage(FieldOutOfRange refusal) {
        return fieldsBeforeGroup + refusal.number();
    }

    int u8() {
        fieldsRead++;
        return nextByte();
    }

    int u16() {
        fieldsRead++;
        return next16();
    }

    long u32() {
        fieldsRead++;
        return next32();
    }

    int i32() {
        fieldsRead++;
        return (int) next32();
    }

    long u64() {
        fieldsRead++;
        return next32() | next32() << Integer.SIZE;
    }

    /** The bytes that are left, which count as one field. */
    Octets rest() {
        fieldsRead++;
        Octets rest = Octets.of(bytes, at, end);
        at = end;
        return rest;
    }

    private int nextByte() {
        return bytes[at++] & 0xFF;
    }

    private int next16() {
        return nextByte() | nextByte() << Byte.SIZE;
    }

    private long next32() {
        return next16() | (long) next16() << Short.SIZE;
    }
}
