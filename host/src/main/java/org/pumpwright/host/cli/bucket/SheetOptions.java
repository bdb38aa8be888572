package org.pumpwright.host.cli.bucket;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.bucket.BucketCalibration;
import org.pumpwright.host.app.bucket.ShopFile;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecordFile;
import org.pumpwright.host.record.RunRecordException;
import picocli.CommandLine.Option;

/** What stands on the papers of a bucket test and where they go. */
final class SheetOptions {
    @Option(
            names = "--bench",
            paramLabel = "FILE",
            description = "YAML with scale, liquid and meter, for runs from a CSV sheet or from a stand.")
    @Nullable
    Path bench;

    @Option(
            names = "--shop",
            paramLabel = "FILE",
            description = "The shop's name and address; fixtures/shop.yaml (an invented shop) if not given.")
    private @Nullable Path shop;

    @Option(
            names = "--units",
            paramLabel = "us|metric",
            description = "Units of the papers; us if not given. K always stands in both.",
            defaultValue = "US")
    UnitSystem units = UnitSystem.US;

    @Option(
            names = "--records",
            paramLabel = "FOLDER",
            description = "Where record and papers are kept; 'records/buckets' beside the program.")
    private @Nullable Path records;

    @Option(
            names = "--override",
            paramLabel = "WHY",
            description = "Accepts K though a rule does not hold. The reason stands on the report as a deviation.")
    private @Nullable String override;

    @Option(
            names = "--next",
            paramLabel = "DAY",
            description = "When to calibrate next; only where the customer has agreed to be told.")
    private @Nullable String next;

    @Option(
            names = "--amends",
            paramLabel = "FILE",
            description = "The record of a test whose report this one takes the place of; needs --because.")
    private @Nullable Path amends;

    @Option(names = "--because", paramLabel = "WHY", description = "Why the older report is replaced.")
    private @Nullable String because;

    @Option(
            names = "--before",
            paramLabel = "FILE",
            description =
                    "The record of the test before the meter was adjusted or repaired: both K stand on the report.")
    @Nullable
    Path before;

    @Option(names = "--numbers", description = "Prints every run and every line of the budgets too.")
    boolean numbers;

    @Option(names = "--json", description = "Prints the result as one JSON object, and nothing else.")
    boolean json;

    @Option(
            names = "--dcc-schema",
            paramLabel = "FILE",
            description = "Holds the certificate against this dcc.xsd, with SI_Format.xsd where it imports it from.")
    @Nullable
    Path dccSchema;

    Path records(Workshop workshop) {
        return Optional.ofNullable(records).orElse(workshop.records().resolve("buckets"));
    }

    @Option(
            names = "--store",
            paramLabel = "ADDRESS",
            description =
                    "Database of the record: jdbc:postgresql://...; the file ledger.db beside the runs if not given.")
    private @Nullable String store;

    RecordBook book(Workshop workshop) throws OrderException {
        return workshop.recordBook(Optional.ofNullable(records).orElse(workshop.records()), Optional.ofNullable(store));
    }

    BucketCalibration.Wishes wishes(Workshop workshop, boolean simulated)
            throws DataFileException, OrderException, RunRecordException {
        return new BucketCalibration.Wishes(
                ShopFile.read(Optional.ofNullable(shop).orElse(workshop.home().resolve("fixtures/shop.yaml"))),
                given(override),
                day(next),
                amendment(),
                simulated);
    }

    private static Optional<String> given(@Nullable String text) {
        return Optional.ofNullable(text).filter(words -> !words.isBlank());
    }

    private static Optional<String> day(@Nullable String text) throws OrderException {
        Optional<String> day = given(text);
        try {
            day.ifPresent(LocalDate::parse);
            return day;
        } catch (DateTimeParseException e) {
            throw new OrderException("--next is '%s': a day such as 2027-03-02 is needed".formatted(text));
        }
    }

    private Optional<BucketRecord.Amendment> amendment() throws OrderException, RunRecordException {
        if (amends == null) {
            return Optional.empty();
        }
        if (because == null || because.isBlank()) {
            throw new OrderException("--amends needs --because: an amended report says why");
        }
        BucketRecord old = BucketRecordFile.read(amends);
        int revision =
                old.wording().amends().map(BucketRecord.Amendment::revision).orElse(0) + 1;
        return Optional.of(new BucketRecord.Amendment(old.id(), revision, because));
    }
}
