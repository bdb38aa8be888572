package org.pumpwright.benchmarks.regrade;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.RunWatcher;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.RunEvent;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.wire.WireTiming;

/** A folder of stored runs: a few distinct ones, and as many copies under ids of their own as are wanted. Thread-safe. */
final class StoredRuns {
    private static final Instant FIRST = Instant.parse("2026-03-02T09:15:00Z");
    private static final String SEAL = "  \"sha256_of_all_lines_above\": \"";
    private static final Duration APART = Duration.ofMinutes(10);

    private StoredRuns() {}

    /** Distinct runs of the demo pump by its own plan: healthy units and every fault in turn, at all severities. */
    static List<Path> distinct(Shelf shelf, int count, Path scratch) throws Exception {
        List<Path> runs = new ArrayList<>();
        PumpFault[] faults = PumpFault.values();
        Severity[] severities = Severity.values();
        for (int i = 0; i < count; i++) {
            PumpFault fault = i % 2 == 0 ? PumpFault.HEALTHY : faults[(i / 2) % faults.length];
            PracticeUnit unit = new PracticeUnit(fault, severities[i % severities.length], i + 1L);
            runs.add(run(shelf, unit, i, scratch));
        }
        return runs;
    }

    private static Path run(Shelf shelf, PracticeUnit unit, int number, Path scratch) throws Exception {
        Clock clock = Clock.fixed(FIRST.plus(APART.multipliedBy(number)), ZoneOffset.UTC);
        RecordFolder folder = new RecordFolder(scratch, scratch.resolve("spare"));
        Stands stands = new Stands(WireTiming.STANDARD, SerialPorts::open);
        Acceptance.Order order = new Acceptance.Order(
                "simulated",
                new Stands.Reach(Optional.empty(), Optional.of(unit), OptionalDouble.empty(), Map.of()),
                "demo-pump",
                Optional.empty(),
                "B" + number,
                "benchmark",
                UnitSystem.US);
        return new Acceptance(shelf, stands, folder, clock)
                .carryOut(order, new Silent(), new StopButton(), Operator.NOBODY)
                .kept()
                .record();
    }

    /** Hears everything and says nothing. */
    private static final class Silent implements RunWatcher {
        @Override
        public void heard(RunEvent event) {}
    }

    /** Fills a folder with copies and gives their files. */
    static List<Path> copies(List<Path> distinct, int count, Path folder) throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path file : distinct) {
            texts.add(Files.readString(file));
        }
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Path file = folder.resolve(id(i)).resolve("record.json");
            Files.createDirectories(file.getParent());
            files.add(Files.writeString(file, withId(texts.get(i % texts.size()), id(i))));
        }
        return files;
    }

    /** The record's text under another id, sealed anew: the last entry is the SHA-256 of every line above it. */
    private static String withId(String text, String id) {
        int seal = text.indexOf(SEAL);
        String above = text.substring(0, seal).replaceFirst("\"id\": \"[^\"]*\"", "\"id\": \"" + id + "\"");
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(above.getBytes(StandardCharsets.UTF_8));
            return above
                    + SEAL
                    + HexFormat.of().formatHex(hash)
                    + text.substring(seal + SEAL.length() + 2 * hash.length);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String id(int number) {
        return "copy-%06d".formatted(number);
    }

    /** Removes a folder with all that is in it. */
    static void remove(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }
}
