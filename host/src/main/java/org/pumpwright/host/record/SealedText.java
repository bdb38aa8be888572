package org.pumpwright.host.record;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/** A JSON text whose last entry is the SHA-256 of every line above it, in hexadecimal. Thread-safe. */
final class SealedText {
    static final String KEY = "sha256_of_all_lines_above";
    /** Stands where the digest will be. */
    static final String BLANK = "0".repeat(64);

    private static final String LAST_LINES = "  \"" + KEY + "\": \"%s\"\n}\n";
    private static final int LAST_LINES_LENGTH = LAST_LINES.formatted(BLANK).length();

    private SealedText() {}

    /**
     * Puts the digest in.
     *
     * @param json pretty-printed with two spaces and plain line feeds, the blank entry last
     */
    static byte[] seal(String json) {
        byte[] bytes = (json + "\n").getBytes(StandardCharsets.UTF_8);
        byte[] above = above(bytes);
        byte[] last = lastLines(above);
        System.arraycopy(last, 0, bytes, above.length, last.length);
        return bytes;
    }

    /** True when the digest is there and right. */
    static boolean intact(byte[] bytes) {
        if (bytes.length < LAST_LINES_LENGTH) {
            return false;
        }
        byte[] above = above(bytes);
        return Arrays.equals(lastLines(above), Arrays.copyOfRange(bytes, above.length, bytes.length));
    }

    private static byte[] above(byte[] bytes) {
        return Arrays.copyOf(bytes, bytes.length - LAST_LINES_LENGTH);
    }

    private static byte[] lastLines(byte[] above) {
        return LAST_LINES.formatted(HexFormat.of().formatHex(sha256(above))).getBytes(StandardCharsets.US_ASCII);
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
