package org.pumpwright.host.record.ledger;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The open keys that are, or once were, trusted, by their digest. Thread-safe.
 *
 * @param keys by {@link CheckingKey#digest}
 */
public record Keyring(Map<Digest, CheckingKey> keys) {
    public Keyring {
        keys = Map.copyOf(keys);
    }

    /** A ring of some keys. */
    public static Keyring of(CheckingKey... keys) {
        Map<Digest, CheckingKey> byDigest = new HashMap<>();
        for (CheckingKey key : keys) {
            byDigest.put(key.digest(), key);
        }
        return new Keyring(byDigest);
    }

    /**
     * All files {@code *.pub} of a folder; none when there is no such folder.
     *
     * @throws IOException when one can't be read or is no key
     */
    public static Keyring ofFolder(Path folder) throws IOException {
        Map<Digest, CheckingKey> byDigest = new HashMap<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.pub")) {
                for (Path file : files) {
                    CheckingKey key = KeyFile.readOpen(file);
                    byDigest.put(key.digest(), key);
                }
            }
        }
        return new Keyring(byDigest);
    }

    /** The key with a digest. */
    public Optional<CheckingKey> key(Digest digest) {
        return Optional.ofNullable(keys.get(digest));
    }
}
