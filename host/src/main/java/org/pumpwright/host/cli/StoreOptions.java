package org.pumpwright.host.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.record.Bookkeeper;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.curve.HealthyCurve;
import picocli.CommandLine.Option;

/** Which record a command works with: the same options on every command that reads or writes one. */
public final class StoreOptions {
    @Option(
            names = "--records",
            paramLabel = "FOLDER",
            description = "Folder of records; 'records' beside the program if not given.")
    private @Nullable Path records;

    @Option(
            names = "--store",
            paramLabel = "ADDRESS",
            description = "Database that stands share: jdbc:postgresql://...; ledger.db in that folder if not given.")
    private @Nullable String store;

    /** The record, still closed; whoever asks closes it. */
    public RecordBook book(Workshop workshop) throws OrderException {
        return workshop.recordBook(records(workshop), Optional.ofNullable(store));
    }

    /** Puts a healthy curve on record that was just made or approved. */
    RecordBook.Entered curve(Workshop workshop, HealthyCurve curve, String what, Path file) throws OrderException {
        RecordBook book = book(workshop);
        try (Bookkeeper keeper = new Bookkeeper(book)) {
            book.noteCurve(curve, what, file, OffsetDateTime.now(workshop.clock()));
            return keeper.enter(List.of());
        } catch (IOException e) {
            return new RecordBook.Entered(
                    List.of(),
                    book.waiting(),
                    List.of("the curve can't be noted: %s. Its file is as it should be.".formatted(e.getMessage())));
        }
    }

    /** The folder of records. */
    public Path records(Workshop workshop) {
        return Optional.ofNullable(records).orElse(workshop.records());
    }
}
