package org.pumpwright.host.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.wire.WireTiming;

/** Runs the command line inside the test and keeps what it prints. */
public final class CommandLineBench {
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T09:15:00Z"), ZoneOffset.ofHours(-6));

    /** Where a run goes that its folder does not take. */
    final Path spare;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final Workshop workshop;

    public CommandLineBench() {
        this(Firmware.root(), SerialPorts::open);
    }

    CommandLineBench(Stands.SerialOpener opener) {
        this(Firmware.root(), opener);
    }

    /** With this environment, at this time, and a spare folder that may be no place to write. */
    public CommandLineBench(Clock clock, Path spare, Map<String, String> environment) {
        this.spare = spare;
        workshop = new Workshop(
                Firmware.root(),
                spare,
                clock,
                new Stands(WireTiming.STANDARD, SerialPorts::open),
                Reader.nullReader(),
                false,
                environment);
    }

    CommandLineBench(Path home, Stands.SerialOpener opener) {
        spare = temporary();
        workshop = new Workshop(
                home,
                spare,
                CLOCK,
                new Stands(WireTiming.STANDARD, opener),
                Reader.nullReader(),
                false,
                environment(home));
    }

    /** Keys and records of tests lie beside no one's own. */
    static Map<String, String> environment(Path home) {
        String keys = temporary().toString();
        return home.equals(Firmware.root())
                ? Map.of(
                        "PUMPWRIGHT_KEYS",
                        keys,
                        "PUMPWRIGHT_RECORDS",
                        temporary().toString())
                : Map.of("PUMPWRIGHT_KEYS", keys);
    }

    private static Path temporary() {
        try {
            Path folder = Files.createTempDirectory("pumpwright-spare");
            folder.toFile().deleteOnExit();
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Workshop workshop() {
        return workshop;
    }

    public int run(String... arguments) {
        return Main.run(workshop, new PrintWriter(out, true), new PrintWriter(err, true), arguments);
    }

    public String out() {
        return out.toString();
    }

    public String err() {
        return err.toString();
    }

    /** The only record in a folder of records. */
    static RunRecord onlyRecord(Path records) {
        try (Stream<Path> files = Files.walk(records)) {
            List<Path> found =
                    files.filter(file -> file.endsWith("record.json")).toList();
            if (found.size() != 1) {
                throw new AssertionError("not one record but " + found);
            }
            return RunRecordFile.read(found.get(0));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (RunRecordException e) {
            throw new AssertionError(e);
        }
    }
}
