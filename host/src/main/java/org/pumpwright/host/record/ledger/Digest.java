package org.pumpwright.host.record.ledger;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A SHA-256 digest (FIPS 180-4) as 64 hexadecimal digits, small letters. Thread-safe.
 *
 * @param hex the digits
 */
public record Digest(String hex) {
    private static final int DIGITS = 64;

    /** What the first entry of a chain follows. */
    public static final Digest NOTHING = new Digest("0".repeat(DIGITS));

    public Digest {
        if (hex.length() != DIGITS || !hex.chars().allMatch(c -> (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'))) {
            throw new IllegalArgumentException(
                    "'%s' is no SHA-256: %d hexadecimal digits, small letters, are needed".formatted(hex, DIGITS));
        }
    }

    /** The digest of some bytes, of one piece after the other. */
    public static Digest of(byte[]... pieces) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (byte[] piece : pieces) {
                digest.update(piece);
            }
            return new Digest(HexFormat.of().formatHex(digest.digest()));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
