package org.pumpwright.host.record.ledger;

import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.Signature;
import java.util.HexFormat;

/**
 * The key with which a shop's entries are signed: Ed25519 (RFC 8032). Thread-safe.
 *
 * @param secret never leaves the machine
 * @param open what others check with
 */
public record SigningKey(PrivateKey secret, CheckingKey open) {
    private static final String ALGORITHM = "Ed25519";

    /** A new key. */
    public static SigningKey generate() {
        try {
            KeyPair pair = KeyPairGenerator.getInstance(ALGORITHM).generateKeyPair();
            return new SigningKey(pair.getPrivate(), new CheckingKey(pair.getPublic()));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Java 17 has " + ALGORITHM, e);
        }
    }

    /** The signature of some bytes, hexadecimal. */
    String sign(byte[] bytes) {
        try {
            Signature signature = Signature.getInstance(ALGORITHM);
            signature.initSign(secret);
            signature.update(bytes);
            return HexFormat.of().formatHex(signature.sign());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("the key cannot sign", e);
        }
    }
}
