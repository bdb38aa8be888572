package org.pumpwright.host.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.quantity.UnitSystem;
import picocli.CommandLine.Option;

/** What stands on the papers and where they go. */
final class PaperOptions {
    @Option(
            names = "--serial",
            paramLabel = "TEXT",
            description = "Serial number, or 'no plate'.",
            defaultValue = "not given")
    String serial = "";

    @Option(names = "--technician", paramLabel = "NAME", description = "Who tests.", defaultValue = "not given")
    String technician = "";

    @Option(
            names = "--units",
            paramLabel = "us|metric",
            description = "Units of the papers; us if not given.",
            defaultValue = "US")
    UnitSystem units = UnitSystem.US;

    @Option(
            names = "--records",
            paramLabel = "FOLDER",
            description = "Where the record is kept; 'records' beside the program.")
    @Nullable
    Path records;

    @Option(names = "--json", description = "Prints events and result as JSON, one object a line, and nothing else.")
    boolean json;

    @Option(
            names = "--numbers",
            description = "Shows the numbers behind the verdict too: corrections, uncertainties, where limits stand.")
    boolean numbers;

    @Option(names = "--quiet", description = "No live values.")
    boolean quiet;

    @Option(
            names = "--store",
            paramLabel = "ADDRESS",
            description =
                    "Database of the record: jdbc:postgresql://...; the file ledger.db beside the runs if not given.")
    private @Nullable String store;

    RecordBook book(Workshop workshop) throws OrderException {
        return workshop.recordBook(records(workshop), Optional.ofNullable(store));
    }

    Path records(Workshop workshop) {
        return Optional.ofNullable(records).orElse(workshop.records());
    }
}
