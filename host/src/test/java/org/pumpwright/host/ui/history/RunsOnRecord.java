package org.pumpwright.host.ui.history;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.RunWatcher;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.app.bucket.BucketCalibration;
import org.pumpwright.host.app.bucket.SheetFile;
import org.pumpwright.host.app.bucket.ShopFile;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.ui.BenchServices;
import org.pumpwright.host.ui.WindowTest;

/** Simulated runs put on record, for tests of what is shown of them. */
public final class RunsOnRecord {
    private RunsOnRecord() {}

    /**
     * A run of a simulated pump, on record.
     *
     * @param fault as a word; {@code healthy} for a healthy one
     * @param hours after the clock's morning
     */
    public static RunRecord add(BenchServices services, String serial, String fault, Optional<String> claim, int hours)
            throws Exception {
        RunRecord run = made(
                        services,
                        serial,
                        fault,
                        new Acceptance.Job(Optional.empty(), true, Optional.empty(), claim),
                        hours)
                .record();
        services.book().workOff(List.of(run));
        return run;
    }

    /** A run of a simulated pump that is kept in its folder and not on record yet. */
    public static Acceptance.Result made(
            BenchServices services, String serial, String fault, Acceptance.Job job, int hours) throws Exception {
        PracticeUnit unit =
                new PracticeUnit(UnitKind.PUMP_12V, PracticeUnit.fault(UnitKind.PUMP_12V, fault), Severity.SEVERE, 3);
        Acceptance acceptance = new Acceptance(
                services.shelf(),
                services.stands(),
                services.recordFolder(),
                Clock.offset(WindowTest.CLOCK, Duration.ofHours(hours)));
        Acceptance.Order order = new Acceptance.Order(
                        "simulated",
                        new Stands.Reach(Optional.empty(), Optional.of(unit), OptionalDouble.empty(), Map.of()),
                        "demo-pump",
                        Optional.empty(),
                        serial,
                        "Terry Tester",
                        UnitSystem.US)
                .within(job);
        return acceptance.carryOut(order, (RunWatcher) event -> {}, new StopButton(), Operator.NOBODY);
    }

    /** The bucket test of the example sheet, on record. */
    public static BucketRecord addBucketTest(BenchServices services) throws Exception {
        Path data = services.home().resolve("fixtures");
        BucketCalibration calibration = new BucketCalibration(services.records().resolve("buckets"), WindowTest.CLOCK);
        BucketRecord test = calibration
                .work(
                        SheetFile.read(data.resolve("buckets/weighed-example.yaml"), UnitSystem.US),
                        new BucketCalibration.Wishes(
                                ShopFile.read(data.resolve("shop.yaml")),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                false))
                .record();
        services.book().markBucketTest(test.id(), calibration.file(test), Optional.empty());
        calibration.keep(test, UnitSystem.US);
        services.book().workOff(List.of());
        return test;
    }

    /** Puts every run of a folder on record in this book too. */
    public static void addAgain(RecordBook book, Path records) throws Exception {
        for (Path file : files(records)) {
            RecordFolder.outbox(records).put(file.getParent().getFileName().toString(), "run");
        }
        book.workOff(List.of());
    }

    private static List<Path> files(Path records) throws Exception {
        try (Stream<Path> all = Files.walk(records)) {
            return all.filter(file -> file.getFileName().toString().equals("record.json"))
                    .toList();
        }
    }
}
