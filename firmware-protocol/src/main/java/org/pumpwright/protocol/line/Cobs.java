package org.pumpwright.protocol.line;

import java.util.Arrays;
import java.util.Objects;

/**
 * Consistent overhead byte stuffing: turns any bytes into bytes without a zero, and back. Source: S. Cheshire and M.
 * Baker, "Consistent Overhead Byte Stuffing", IEEE/ACM Transactions on Networking 7 (1999). The delimiter is not part
 * of it. Thread-safe.
 */
public final class Cobs {
    /** What {@link #decode} returns for bytes that no encoder can have made. */
    public static final int NOT_COBS = -1;

    /** The length code of a block of 254 bytes that no zero follows. */
    private static final int FULL_BLOCK = 0xFF;

    private Cobs() {}

    /** The most bytes that {@code plainLength} bytes can need when encoded. */
    public static int maxEncodedLength(int plainLength) {
        return plainLength + plainLength / (FULL_BLOCK - 1) + 1;
    }

    /** The encoded form of a whole array, without delimiter. */
    public static byte[] encode(byte[] plain) {
        byte[] encoded = new byte[maxEncodedLength(plain.length)];
        return Arrays.copyOf(encoded, encode(plain, 0, plain.length, encoded, 0));
    }

    /**
     * Encodes into the caller's array, which must not be the source.
     *
     * @return how many bytes were written
     * @throws IndexOutOfBoundsException when the source part is not within its array, or the target has less than
     *     {@link #maxEncodedLength} bytes left
     */
    public static int encode(byte[] plain, int offset, int length, byte[] target, int targetOffset) {
        Objects.checkFromIndexSize(offset, length, plain.length);
        Objects.checkFromIndexSize(targetOffset, maxEncodedLength(length), target.length);
        int codeAt = targetOffset;
        int out = targetOffset + 1;
        int code = 1;
        for (int in = offset; in < offset + length; in++) {
            if (code == FULL_BLOCK) {
                target[codeAt] = (byte) code;
                codeAt = out++;
                code = 1;
            }
            if (plain[in] == 0) {
                target[codeAt] = (byte) code;
                codeAt = out++;
                code = 1;
            } else {
                target[out++] = plain[in];
                code++;
            }
        }
        target[codeAt] = (byte) code;
        return out - targetOffset;
    }

    /**
     * Decodes into the caller's array, which may be the source at the same or an earlier place. Once it has returned
     * {@link #NOT_COBS} the target holds rubbish.
     *
     * @return how many bytes were written (always fewer than {@code length}), or {@link #NOT_COBS} when there is no
     *     byte at all, a zero among the bytes, or a length code that points past the end
     * @throws IndexOutOfBoundsException when the source part is not within its array, or the target is too short
     */
    public static int decode(byte[] encoded, int offset, int length, byte[] target, int targetOffset) {
        Objects.checkFromIndexSize(offset, length, encoded.length);
        int end = offset + length;
        int in = offset;
        int out = targetOffset;
        int code = 0;
        while (in < end) {
            code = encoded[in++] & 0xFF;
            int blockEnd = in + code - 1;
            if (code == 0 || blockEnd > end) {
                return NOT_COBS;
            }
            while (in < blockEnd) {
                byte next = encoded[in++];
                if (next == 0) {
                    return NOT_COBS;
                }
                target[out++] = next;
            }
            if (code != FULL_BLOCK && in < end) {
                target[out++] = 0;
            }
        }
        return code == 0 ? NOT_COBS : out - targetOffset;
    }
}
