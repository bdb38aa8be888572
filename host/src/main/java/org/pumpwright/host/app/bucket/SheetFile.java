package org.pumpwright.host.app.bucket;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.calibrate.Bench;
import org.pumpwright.host.calibrate.BucketTest;
import org.pumpwright.host.calibrate.Declared;
import org.pumpwright.host.calibrate.Rules;
import org.pumpwright.host.calibrate.Run;
import org.pumpwright.host.calibrate.WorkingFlow;
import org.pumpwright.host.calibrate.fluid.Liquid;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;

/** Reads sheets of bucket tests: YAML with everything, or YAML with the bench and CSV with the runs. Thread-safe. */
public final class SheetFile {
    private static final DataSchema SCHEMA = DataSchema.beside(SheetFile.class, "sheet.schema.json");
    private static final String CSV = ".csv";
    /** No thermometer of a bench tells less apart. */
    private static final double SAME_KELVIN = 0.05;

    private SheetFile() {}

    /** Runs from elsewhere than the sheet itself. */
    record Runs(List<Run> runs, Map<Integer, Integer> lines, BucketRecord.Source source) {}

    /** Whether a file holds runs only, by its name. */
    public static boolean holdsRunsOnly(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(CSV);
    }

    /**
     * Reads a sheet with its runs.
     *
     * @param units in which findings speak
     * @throws DataFileException when it is absent or can't be used
     */
    public static Sheet read(Path file, UnitSystem units) throws DataFileException {
        return DataFile.read(file, SCHEMA, node -> sheet(node, file, units, Optional.empty()));
    }

    /**
     * Reads the bench from one file and the runs from another.
     *
     * @throws DataFileException when the bench can't be used
     * @throws OrderException when the runs can't
     */
    public static Sheet read(Path bench, Path csv, UnitSystem units) throws DataFileException, OrderException {
        SheetCsv.Read read = SheetCsv.read(csv);
        Runs runs = new Runs(read.runs(), read.lines(), source(csv));
        return withRuns(bench, runs, units);
    }

    /** A bench with runs that were made just now. */
    static Sheet withRuns(Path bench, Runs runs, UnitSystem units) throws DataFileException {
        return DataFile.read(bench, SCHEMA, node -> sheet(node, bench, units, Optional.of(runs)));
    }

    private static Sheet sheet(Node node, Path file, UnitSystem speak, Optional<Runs> elsewhere) {
        SheetUnits units = new SheetUnits();
        BenchReader reader = new BenchReader(node, units);
        Bench bench = reader.bench();
        Optional<Liquid> liquid = reader.liquid();
        Declared declared = declared(node.at("meter"), units);
        Runs runs = elsewhere.orElseGet(() -> ownRuns(node, units, file));
        BucketTest test = new BucketTest(
                day(node),
                bench,
                node.at("liquid").text("name"),
                liquid,
                declared,
                runs.runs(),
                node.find("grade").map(Node::text).orElse("shop").equals("certificate")
                        ? Rules.CERTIFICATE
                        : Rules.SHOP,
                speak);
        List<BucketRecord.Condition> conditions = new ArrayList<>(reader.conditions());
        conditions.addAll(temperatures(runs.runs()));
        return new Sheet(
                test,
                node.find("invented").isPresent() && node.flag("invented"),
                job(node),
                meter(node.at("meter"), units),
                node.text("method") + "-" + node.text("start") + " v1",
                reader.equipment(),
                conditions,
                sentences(node, "deviations"),
                sentences(node, "opinions"),
                runs.lines(),
                places(node, file),
                runs.source());
    }

    /** Where what is no run stands, by the words that a refusal uses for it. */
    private static Map<String, String> places(Node node, Path file) {
        Map<String, String> places = new HashMap<>();
        for (String key : List.of("liquid", "scale", "vessel", "thermometer", "flows")) {
            node.find(key).ifPresent(part -> places.put(key, name(file) + ":" + part.line()));
        }
        node.find("master").ifPresent(part -> places.put("master meter", name(file) + ":" + part.line()));
        return places;
    }

    private static String name(Path file) {
        Path name = file.getFileName();
        return name == null ? file.toString() : name.toString();
    }

    private static Runs ownRuns(Node node, SheetUnits units, Path file) {
        RunReader reader = new RunReader(units);
        reader.read(node.find("flows")
                .orElseThrow(() -> SheetUnits.missing(
                        node.at("sheet"), "has no flows: add them, or give the runs as a CSV sheet with --typed")));
        return new Runs(reader.runs(), reader.lines(), source(file));
    }

    private static List<BucketRecord.Condition> temperatures(List<Run> runs) {
        double least = runs.stream().mapToDouble(Run::liquidCelsius).min().orElse(Double.NaN);
        double most = runs.stream().mapToDouble(Run::liquidCelsius).max().orElse(Double.NaN);
        return Math.abs(most - least) < SAME_KELVIN
                ? List.of(new BucketRecord.Condition("Liquid temperature", least, "°C"))
                : List.of(
                        new BucketRecord.Condition("Liquid temperature, lowest", least, "°C"),
                        new BucketRecord.Condition("Liquid temperature, highest", most, "°C"));
    }

    private static Declared declared(Node meter, SheetUnits units) {
        List<WorkingFlow> working = new ArrayList<>();
        for (Node flow : meter.find("working").map(Node::items).orElse(List.of())) {
            working.add(new WorkingFlow(units.requiredFlow(flow, ""), BenchReader.number(flow, "share", 1)));
        }
        return BenchReader.made(
                meter,
                () -> new Declared(
                        BenchReader.range(units, meter, "made_for_"),
                        BenchReader.range(units, meter, ""),
                        working,
                        units.flow(meter, "start_"),
                        units.k(meter, "previous_"),
                        units.k(meter, "nominal_")));
    }

    private static BucketRecord.Job job(Node node) {
        return new BucketRecord.Job(
                text(node, "customer"),
                node.find("place").map(Node::text).orElse("laboratory"),
                BenchReader.day(node, "received"),
                day(node),
                filledIn(node.at("technician")),
                text(node, "signer"));
    }

    private static BucketRecord.Meter meter(Node meter, SheetUnits units) {
        return new BucketRecord.Meter(
                filledIn(meter.at("serial")),
                text(meter, "model"),
                text(meter, "condition"),
                meter.find("state").map(Node::text).orElse("as-found").replace('-', ' '),
                value(units.k(meter, "previous_")),
                value(units.k(meter, "other_state_")));
    }

    private static OptionalDouble value(Optional<KFactor> k) {
        return k.map(KFactor::pulsesPerM3).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static LocalDate day(Node node) {
        return BenchReader.day(node, "date").orElseThrow();
    }

    /** A text that a new sheet leaves open. */
    static String filledIn(Node node) {
        if (node.text().strip().equals("?")) {
            node.refuse("is still ?: fill it in");
        }
        return node.text();
    }

    private static String text(Node in, String key) {
        return in.find(key).map(Node::text).orElse("");
    }

    private static List<String> sentences(Node in, String key) {
        return in.find(key).map(Node::items).orElse(List.of()).stream()
                .map(Node::text)
                .toList();
    }

    private static BucketRecord.Source source(Path file) {
        try {
            byte[] bytes = Files.readAllBytes(file);
            return source(name(file), bytes);
        } catch (IOException e) {
            throw new IllegalArgumentException("it can't be read a second time: " + e.getMessage(), e);
        }
    }

    static BucketRecord.Source source(String name, byte[] bytes) {
        try {
            String sha256 = HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
            return new BucketRecord.Source(name, sha256, new String(bytes, StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
