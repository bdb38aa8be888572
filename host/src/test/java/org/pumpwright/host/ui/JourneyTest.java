package org.pumpwright.host.ui;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.app.record.StoreChoice;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.ui.work.Opener;

/** A test of the whole window, with the stand behind what it takes for a serial port. */
abstract class JourneyTest extends WindowTest {
    /** Goes on, so that no two runs begin at the same moment. */
    static final Clock GOES_ON =
            Clock.offset(Clock.system(ZoneOffset.ofHours(-6)), Duration.between(Instant.now(), CLOCK.instant()));

    @TempDir
    Path folder;

    final LinkedBlockingQueue<Path> opened = new LinkedBlockingQueue<>();
    /** The line of the simulated board that is in use. */
    volatile PacedLine latest;

    private Bench bench;
    private Stage stage;
    Hands hands;
    JobByKeys job;

    /** Opens the window on a stand at a port, with records in this folder and the store that belongs there. */
    void open(Path records, Optional<String> server, String port, Stands.SerialOpener opener) throws Exception {
        open(settings(port, BenchKeys.USUAL), services(records, folder.resolve("spare"), server, opener), opened::add);
    }

    /** Opens the window on a healthy unit at a simulated board. */
    void openSimulated(double pace, BenchKeys keys, Opener opener) throws Exception {
        Path records = folder.resolve("records");
        Stands.SerialOpener line = (port, baud) -> latest = healthy(pace);
        open(settings("port", keys), services(records, folder.resolve("spare"), Optional.empty(), line), opener);
    }

    private void open(BenchSettings settings, BenchServices services, Opener opener) throws Exception {
        onScreen(() -> {
            bench = new Bench(settings, services, services.shelf().stand("serial"), opener);
            stage = new Stage();
            bench.show(stage, false);
            return true;
        });
        hands = new Hands(
                bench.window().scene(), new SceneKeyboard(bench.window().scene()));
        job = new JobByKeys(hands);
    }

    static BenchSettings settings(String port, BenchKeys keys) {
        return new BenchSettings("serial", Optional.of(port), Language.EN, UnitSystem.US, false, false, keys);
    }

    static BenchServices services(Path records, Path spare, Optional<String> server, Stands.SerialOpener opener) {
        StoreChoice choice =
                new StoreChoice(server, records.resolve("ledger.db"), spare.resolveSibling("keys"), StoreChoice.DESK);
        return new BenchServices(
                Firmware.root(),
                new Shelf(Firmware.root().resolve("fixtures")),
                new Stands(WireTiming.STANDARD, opener),
                records,
                new RecordFolder(records, spare).marking(),
                new RecordBook(choice, records, spare),
                GOES_ON);
    }

    /** A line to a healthy unit on a simulated board. */
    static PacedLine healthy(double pace) {
        return new PacedLine(
                new SimulatedBoard(
                        PracticeUnit.healthy(UnitKind.PUMP_12V, 1).plant(),
                        TestStands.described("serial").channels()),
                pace);
    }

    BenchWindow window() {
        return bench.window();
    }

    /** The paper that was opened. */
    Path paper() throws InterruptedException {
        Path paper = opened.poll(60, TimeUnit.SECONDS);
        if (paper == null) {
            throw new AssertionError("no paper was opened");
        }
        return paper;
    }

    /** The runs that are kept, read again from their files, the oldest first. */
    static List<RunRecord> kept(Path records) throws Exception {
        List<RunRecord> runs = new ArrayList<>();
        try (Stream<Path> files = Files.walk(records)) {
            for (Path file :
                    files.filter(each -> each.endsWith("record.json")).sorted().toList()) {
                runs.add(RunRecordFile.read(file));
            }
        }
        return runs;
    }

    @AfterEach
    void closeBench() throws Exception {
        onScreen(() -> {
            if (bench != null) {
                stage.hide();
                bench.close();
            }
            return true;
        });
    }
}
