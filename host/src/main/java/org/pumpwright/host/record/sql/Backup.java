package org.pumpwright.host.record.sql;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.record.ledger.Audit;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Heads;
import org.pumpwright.host.record.ledger.Keyring;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreCopy;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.record.ledger.StoreException.Reason;

/**
 * Everything that is on record in one file, whatever database it came from, and back into whatever database. Beside
 * {@code FILE} stands {@code FILE.sha256}, which {@code sha256sum -c} checks without this program. Thread-safe.
 */
public final class Backup {
    private Backup() {}

    /**
     * What was copied.
     *
     * @param audit of the copy; clean
     * @param file digest of the backup file
     * @param heads the ends of all chains in it, worth writing down
     */
    public record Receipt(Audit.Result audit, Digest file, Heads heads) {}

    /**
     * Writes a backup. The file has its name only when it is whole, audited and flushed to the disk.
     *
     * @param file must not exist
     * @throws StoreException when the file exists or can't be written, or the store is not clean; nothing half is left
     */
    public static Receipt write(RecordStore from, Path file, Keyring keys) throws StoreException {
        if (Files.exists(file)) {
            throw failed("%s exists already and is left as it is. Choose another name.".formatted(file), null);
        }
        Path half = file.resolveSibling(file.getFileName() + ".part");
        Path digestFile = file.resolveSibling(file.getFileName() + ".sha256");
        try {
            remove(half);
            Audit.Result audit;
            Heads heads;
            try (RecordStore to = RecordStores.forCopy(half)) {
                audit = StoreCopy.copy(from, to, keys);
                heads = Heads.of(to);
            }
            RecordStores.makeOneFile(half);
            Digest digest = digest(half);
            force(half);
            Files.writeString(
                    digestFile, "%s  %s\n".formatted(digest.hex(), file.getFileName()), StandardCharsets.UTF_8);
            force(digestFile);
            Files.move(half, file, StandardCopyOption.ATOMIC_MOVE);
            forceFolder(file);
            return new Receipt(audit, digest, heads);
        } catch (IOException e) {
            throw failed(
                    "the backup %s can't be written: %s. Nothing half is left; choose another disk or make room."
                            .formatted(file, e),
                    e);
        } finally {
            remove(half);
        }
    }

    /**
     * Puts a backup into an empty store.
     *
     * @param to empty, of either database
     * @throws StoreException when the file is not what was written, the store is not empty, or the copy is not clean
     */
    public static Receipt restore(Path file, RecordStore to, Keyring keys) throws StoreException {
        Digest digest;
        try {
            digest = digest(file);
            Path digestFile = file.resolveSibling(file.getFileName() + ".sha256");
            if (Files.exists(digestFile)
                    && !Files.readString(digestFile, StandardCharsets.UTF_8).startsWith(digest.hex())) {
                throw failed(
                        "%s is not the file that was written: its SHA-256 is not that of %s. Take another backup."
                                .formatted(file, digestFile),
                        null);
            }
        } catch (IOException e) {
            throw failed("the backup %s can't be read: %s.".formatted(file, e), e);
        }
        try (RecordStore from = RecordStores.readOnly(file)) {
            Audit.Result audit = StoreCopy.copy(from, to, keys);
            return new Receipt(audit, digest, Heads.of(to));
        }
    }

    private static Digest digest(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                DigestInputStream digesting = new DigestInputStream(in, MessageDigest.getInstance("SHA-256"))) {
            digesting.transferTo(OutputStream.nullOutputStream());
            return new Digest(
                    HexFormat.of().formatHex(digesting.getMessageDigest().digest()));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** The new name is safe only when the folder is flushed too; Windows does that itself and refuses it here. */
    private static void forceFolder(Path file) throws IOException {
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel folder = FileChannel.open(file.toAbsolutePath().getParent(), StandardOpenOption.READ)) {
                folder.force(true);
            }
        }
    }

    private static void remove(Path half) throws StoreException {
        try {
            Files.deleteIfExists(half);
            Files.deleteIfExists(half.resolveSibling(half.getFileName() + "-wal"));
            Files.deleteIfExists(half.resolveSibling(half.getFileName() + "-shm"));
        } catch (IOException e) {
            throw failed("%s can't be removed: %s. Remove it.".formatted(half, e), e);
        }
    }

    private static StoreException failed(String message, @Nullable Throwable cause) {
        return cause == null
                ? new StoreException(Reason.STORE_FAILED, message)
                : new StoreException(Reason.STORE_FAILED, message, cause);
    }
}
