package org.pumpwright.host.claim.photo;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.record.ledger.Digest;

/**
 * Where the bytes of pictures are: each under its own digest, so that none is kept twice and a changed one is found out.
 * Thread-safe.
 */
public final class PhotoFolder {
    private final Path folder;

    /** @param folder made on first use */
    public PhotoFolder(Path folder) {
        this.folder = folder;
    }

    /** The file of a picture. */
    public Path file(Photo photo) {
        return file(photo.sha256(), photo.format());
    }

    private Path file(Digest digest, Photo.Format format) {
        return folder.resolve(digest.hex().substring(0, 2)).resolve(digest.hex() + "." + format.ending());
    }

    /**
     * Keeps the bytes, whole or not at all.
     *
     * @throws IOException when the disk does not take them
     */
    public Digest keep(byte[] bytes, Photo.Format format) throws IOException {
        Digest digest = Digest.of(bytes);
        Path file = file(digest, format);
        if (Files.exists(file) && Digest.of(Files.readAllBytes(file)).equals(digest)) {
            return digest;
        }
        Files.createDirectories(file.getParent());
        Path part = Files.createTempFile(file.getParent(), "part", "");
        Files.write(part, bytes, StandardOpenOption.SYNC);
        try {
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        }
        return digest;
    }

    /**
     * The bytes of a picture, as they were when it was put on record.
     *
     * @throws IOException when they are gone or are others
     */
    public byte[] read(Photo photo) throws IOException {
        Path file = file(photo);
        if (!Files.exists(file)) {
            throw new IOException("%s is not there: take it from the backup".formatted(file));
        }
        byte[] bytes = Files.readAllBytes(file);
        if (!Digest.of(bytes).equals(photo.sha256())) {
            throw new IOException("%s was changed after it was put on record: take it from the backup".formatted(file));
        }
        return bytes;
    }
}
