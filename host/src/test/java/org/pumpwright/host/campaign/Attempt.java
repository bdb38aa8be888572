package org.pumpwright.host.campaign;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.bench.EmulatedBoard;
import org.pumpwright.host.bench.EmulatedBoard.Pins;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.cli.Main;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.host.trace.Channels;

/** One try: a board of its own, a whole acceptance run on it, one fault at one moment, and what was seen. */
final class Attempt {
    private static final long WATCHED_MICROS = 3_200_000;
    private static final int HOST_ENDS_WITHIN_SECONDS = 60;
    private static final List<String> END_OF_LINE_FAULTS =
            List.of("corrupt-rx 0", "corrupt-tx 0", "drop-rx 0", "drop-tx 0", "plug");

    private final Path folder;
    private final Path plan;

    /**
     * @param folder an empty one
     * @param plan file of the plan
     */
    Attempt(Path folder, Path plan) {
        this.folder = folder;
        this.plan = plan;
    }

    Seen carryOut(Fault fault, Moment moment) throws Exception {
        Plant plant = PracticeUnit.healthy(UnitKind.PUMP_12V, 1).plant();
        Channels channels = TestStands.described("serial").channels();
        boolean here = fault.host() == Fault.Host.HERE;
        try (EmulatedBoard board =
                here ? EmulatedBoard.inLockstep(plant, channels) : EmulatedBoard.start(plant, channels, 1)) {
            Scene scene = new Scene(board, fault.strike(), moment);
            String said = here ? acceptHere(board) : acceptInProcess(board, scene);
            if (scene.struckMicros() < 0) {
                throw new MomentNeverCame(moment, record().map(Judge::says).orElse(said));
            }
            board.command("speed 0");
            List<Pins> pins = watch(board);
            END_OF_LINE_FAULTS.forEach(board::command);
            board.await(last(board).micros() + 20_000);
            return new Seen(moment, scene.struckMicros(), pins, Testimony.of(board), record(), said);
        }
    }

    private String acceptHere(EmulatedBoard board) throws DataFileException, RunRecordException {
        Acceptance acceptance = new Acceptance(
                new Shelf(Firmware.root().resolve("fixtures")),
                new Stands(WireTiming.STANDARD, board::line),
                new RecordFolder(records(), folder.resolve("spare")),
                Clock.systemUTC());
        Acceptance.Order order = new Acceptance.Order(
                "serial",
                new Stands.Reach(Optional.of(board.port()), Optional.empty(), OptionalDouble.empty(), Map.of()),
                "demo-pump",
                Optional.of(plan.toString()),
                "no plate",
                "fault campaign",
                UnitSystem.US);
        try {
            acceptance.carryOut(order, event -> {}, new StopButton(), Operator.NOBODY);
            return "kept a record";
        } catch (OrderException | StandException e) {
            return e.getMessage();
        }
    }

    private String acceptInProcess(EmulatedBoard board, Scene scene) throws IOException, InterruptedException {
        Path output = folder.resolve("host.txt");
        ProcessBuilder starting = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "-Dpumpwright.home=" + Firmware.root(),
                        Main.class.getName(),
                        "accept",
                        "--stand",
                        "serial",
                        "--port",
                        board.port(),
                        "--model",
                        "demo-pump",
                        "--plan",
                        plan.toString(),
                        "--records",
                        records().toString())
                .redirectErrorStream(true)
                .redirectOutput(output.toFile());
        starting.environment().put("PUMPWRIGHT_KEYS", folder.resolve("keys").toString());
        Process host = starting.start();
        scene.hostIs(host);
        try {
            if (!host.waitFor(HOST_ENDS_WITHIN_SECONDS, TimeUnit.SECONDS)) {
                throw new AssertionError("the host did not end: " + Files.readString(output));
            }
        } finally {
            host.destroyForcibly();
        }
        return Files.readString(output);
    }

    private Path records() {
        return folder.resolve("records");
    }

    private Optional<RunRecord> record() throws IOException, RunRecordException {
        if (!Files.isDirectory(records())) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.walk(records())) {
            List<Path> found =
                    files.filter(file -> file.endsWith("record.json")).toList();
            if (found.size() > 1) {
                throw new AssertionError("more than one record: " + found);
            }
            return found.isEmpty() ? Optional.empty() : Optional.of(RunRecordFile.read(found.get(0)));
        }
    }

    /** Until everything has been off for long enough. */
    private static List<Pins> watch(EmulatedBoard board) throws InterruptedException {
        long lastLive = last(board).micros();
        long seen;
        do {
            seen = lastLive;
            board.await(seen + WATCHED_MICROS);
            lastLive = board.history().stream()
                    .filter(Pins::live)
                    .mapToLong(Pins::micros)
                    .max()
                    .orElse(seen);
        } while (lastLive > seen);
        return board.history();
    }

    private static Pins last(EmulatedBoard board) {
        List<Pins> history = board.history();
        return history.get(history.size() - 1);
    }
}
