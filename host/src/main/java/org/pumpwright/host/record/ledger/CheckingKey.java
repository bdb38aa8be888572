package org.pumpwright.host.record.ledger;

import java.security.GeneralSecurityException;
import java.security.PublicKey;
import java.security.Signature;
import java.util.HexFormat;

/**
 * The open half of a key, with which anybody checks a signature. Thread-safe.
 *
 * @param key Ed25519
 */
public record CheckingKey(PublicKey key) {
    private static final String ALGORITHM = "Ed25519";

    /** By what entries name the key: the digest of its X.509 form. */
    public Digest digest() {
        return Digest.of(key.getEncoded());
    }

    /** Whether the signature is this key's over these bytes. Anything that is no signature is not. */
    public boolean signed(byte[] bytes, String signatureHex) {
        try {
            Signature signature = Signature.getInstance(ALGORITHM);
            signature.initVerify(key);
            signature.update(bytes);
            return signature.verify(HexFormat.of().parseHex(signatureHex));
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            return false;
        }
    }
}
