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
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T09:15:00Z"), ZoneOffset.ofHours(-6));

    /** Where a run goes that its folder does not take. */
    final Path spare = temporary();

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final Workshop workshop;

    public CommandLineBench() {
        this(Firmware.root(), SerialPorts::open);
    }

    CommandLineBench(Stands.SerialOpener opener) {
        this(Firmware.root(), opener);
    }

    CommandLineBench(Path home, Stands.SerialOpener opener) {
        workshop =
                new Workshop(home, spare, CLOCK, new Stands(WireTiming.STANDARD, opener), Reader.nullReader(), false);
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
