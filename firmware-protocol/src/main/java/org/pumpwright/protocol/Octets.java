package org.pumpwright.protocol;

import java.util.Arrays;
import java.util.HexFormat;

/** A fixed row of bytes with value equality, so that records can hold one. Immutable and thread-safe. */
public final class Octets {
    private final byte[] bytes;

    private Octets(byte[] bytes) {
        this.bytes = bytes;
    }

    /** A copy of these bytes. */
    public static Octets of(byte... bytes) {
        return new Octets(bytes.clone());
    }

    /**
     * A copy of a part of an array.
     *
     * @throws IndexOutOfBoundsException when the part does not begin within the array
     */
    static Octets of(byte[] bytes, int from, int to) {
        return new Octets(Arrays.copyOfRange(bytes, from, to));
    }

    /** How many bytes there are. */
    public int size() {
        return bytes.length;
    }

    /** Puts the bytes into the caller's array and tells how many there were. */
    int copyTo(byte[] target, int offset) {
        System.arraycopy(bytes, 0, target, offset, bytes.length);
        return bytes.length;
    }

    /** A copy of the bytes. */
    public byte[] toArray() {
        return bytes.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Octets octets && Arrays.equals(bytes, octets.bytes);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bytes);
    }

    /** The bytes as lower-case hexadecimal digits with spaces between. */
    @Override
    public String toString() {
        return HexFormat.ofDelimiter(" ").formatHex(bytes);
    }
}
