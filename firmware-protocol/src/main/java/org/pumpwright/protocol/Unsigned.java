package org.pumpwright.protocol;

/** The ranges of the unsigned integers on the wire. Thread-safe. */
final class Unsigned {
    static final long MAX_U8 = 0xFF;
    static final long MAX_U16 = 0xFFFF;
    static final long MAX_U32 = 0xFFFF_FFFFL;

    private Unsigned() {}

    static void checkU8(int number, String field, long value, String unit) {
        FieldOutOfRange.check(number, field, value, 0, MAX_U8, unit);
    }

    static void checkU16(int number, String field, long value, String unit) {
        FieldOutOfRange.check(number, field, value, 0, MAX_U16, unit);
    }

    static void checkU32(int number, String field, long value, String unit) {
        FieldOutOfRange.check(number, field, value, 0, MAX_U32, unit);
    }
}
