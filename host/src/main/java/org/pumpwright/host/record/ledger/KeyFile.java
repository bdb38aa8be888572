package org.pumpwright.host.record.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;

/**
 * A key as two PEM files (RFC 7468), which other programs read too: {@code NAME.key} (PKCS #8, for the owner only) and
 * {@code NAME.pub} (X.509 SubjectPublicKeyInfo, to be given away). Thread-safe.
 */
public final class KeyFile {
    private static final String SECRET = "PRIVATE KEY";
    private static final String OPEN = "PUBLIC KEY";
    private static final int LINE = 64;

    private KeyFile() {}

    /**
     * Reads the key of a folder, made on first use.
     *
     * @throws IOException when it can't be read or written, or is no such key
     */
    public static SigningKey openOrMake(Path folder, String name) throws IOException {
        Path secret = folder.resolve(name + ".key");
        if (!Files.exists(secret)) {
            make(folder, name);
        }
        return read(secret, folder.resolve(name + ".pub"));
    }

    /**
     * Reads the open half.
     *
     * @throws IOException when it can't be read or is no such key
     */
    public static CheckingKey readOpen(Path file) throws IOException {
        try {
            return new CheckingKey(
                    KeyFactory.getInstance("Ed25519").generatePublic(new X509EncodedKeySpec(decode(file, OPEN))));
        } catch (GeneralSecurityException e) {
            throw new IOException(file + " holds no Ed25519 key: " + e.getMessage(), e);
        }
    }

    private static SigningKey read(Path secret, Path open) throws IOException {
        try {
            return new SigningKey(
                    KeyFactory.getInstance("Ed25519").generatePrivate(new PKCS8EncodedKeySpec(decode(secret, SECRET))),
                    readOpen(open));
        } catch (GeneralSecurityException e) {
            throw new IOException(secret + " holds no Ed25519 key: " + e.getMessage(), e);
        }
    }

    /** The open half is written first: a secret without it would sign what nobody can check. */
    private static void make(Path folder, String name) throws IOException {
        Files.createDirectories(folder);
        SigningKey key = SigningKey.generate();
        Path secret = folder.resolve(name + ".key");
        Files.writeString(
                folder.resolve(name + ".pub"), pem(OPEN, key.open().key().getEncoded()), StandardCharsets.US_ASCII);
        try {
            Files.createFile(secret, ownerOnly(folder));
        } catch (FileAlreadyExistsException e) {
            throw new IOException(secret + " was made by another program in the same moment: try again", e);
        }
        Files.writeString(
                secret,
                pem(SECRET, key.secret().getEncoded()),
                StandardCharsets.US_ASCII,
                StandardOpenOption.WRITE,
                StandardOpenOption.SYNC);
    }

    private static FileAttribute<?>[] ownerOnly(Path folder) {
        boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        return posix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }

    private static String pem(String label, byte[] bytes) {
        return "-----BEGIN %s-----\n%s\n-----END %s-----\n"
                .formatted(label, Base64.getMimeEncoder(LINE, new byte[] {'\n'}).encodeToString(bytes), label);
    }

    private static byte[] decode(Path file, String label) throws IOException {
        String text = Files.readString(file, StandardCharsets.US_ASCII).strip();
        String begin = "-----BEGIN %s-----".formatted(label);
        String end = "-----END %s-----".formatted(label);
        if (!text.startsWith(begin) || !text.endsWith(end)) {
            throw new IOException(
                    "%s is no PEM file of a %s".formatted(file, label.toLowerCase(java.util.Locale.ROOT)));
        }
        return Base64.getMimeDecoder().decode(text.substring(begin.length(), text.length() - end.length()));
    }
}
