package org.pumpwright.host.record.ledger;

import java.io.IOException;
import org.erdtman.jcs.JsonCanonicalizer;

/**
 * JSON in the one form that everybody gets from the same values, so that a hash of it can be checked with any other
 * program: RFC 8785 (JSON Canonicalization Scheme). Thread-safe.
 */
public final class CanonicalJson {
    private CanonicalJson() {}

    /**
     * The canonical bytes, UTF-8.
     *
     * @param json an object or a list
     * @throws IllegalArgumentException when it is no JSON, or holds what the scheme cannot carry, such as a key given twice
     */
    public static byte[] of(String json) {
        try {
            return new JsonCanonicalizer(json).getEncodedUTF8();
        } catch (IOException e) {
            throw new IllegalArgumentException("cannot be brought into canonical form: " + e.getMessage(), e);
        }
    }
}
