package org.pumpwright.host.app.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.record.ledger.Keyring;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.record.sql.Backup;

/** Copies everything on record into one file, and back into an empty store. Thread-safe. */
public final class Backups {
    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("'pumpwright-'uuuuMMdd-HHmmss'.backup'", Locale.ROOT);

    private Backups() {}

    /**
     * What was copied.
     *
     * @param file the backup
     * @param entries how many
     * @param attachments how many things beside them
     * @param sha256 of the file
     */
    public record Copied(Path file, long entries, long attachments, String sha256) {}

    /**
     * Writes a backup into a folder, under a name of its own.
     *
     * @throws OrderException when the folder can't be made
     * @throws StoreException when the store is not whole or the disk refuses; nothing half is left
     */
    public static Copied write(RecordBook book, Path folder, Clock clock) throws OrderException, StoreException {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new OrderException("%s can't be made: %s. Choose another folder.".formatted(folder, e.getMessage()));
        }
        Path file = folder.resolve(NAME.format(LocalDateTime.now(clock)));
        return copied(file, Backup.write(book.reading(), file, keyring(book)));
    }

    /**
     * Puts a backup into a store that holds nothing yet.
     *
     * @throws OrderException when the store holds something, or the keys can't be read
     * @throws StoreException when the backup is not what was written
     */
    public static Copied restore(RecordBook book, Path file) throws OrderException, StoreException {
        RecordStore store = book.store(book.choice().desk());
        if (!store.chains().isEmpty()) {
            throw new OrderException(
                    "%s holds entries already, and a backup goes into an empty store only. Name another folder with --records, or take single entries in with 'pumpwright record import'."
                            .formatted(book.choice().words()));
        }
        return copied(file, Backup.restore(file, store, keyring(book)));
    }

    private static Copied copied(Path file, Backup.Receipt receipt) {
        return new Copied(
                file,
                receipt.audit().entries(),
                receipt.audit().attachments(),
                receipt.file().hex());
    }

    private static Keyring keyring(RecordBook book) throws OrderException {
        try {
            return Keyring.ofFolder(book.choice().keys());
        } catch (IOException e) {
            throw new OrderException(
                    "the keys can't be read: %s. Take the broken file out of the folder.".formatted(e.getMessage()));
        }
    }
}
