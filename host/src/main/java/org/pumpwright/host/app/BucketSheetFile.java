package org.pumpwright.host.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
public final class BucketSheetFile {
    private static final DataSchema SCHEMA = DataSchema.beside(BucketSheetFile.class, "bucket-sheet.schema.json");
    private static final String CSV = ".csv";

    private BucketSheetFile() {}

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
    public static BucketSheet read(Path file, UnitSystem units) throws DataFileException {
        return DataFile.read(file, SCHEMA, node -> sheet(node, file, units, Optional.empty()));
    }

    /**
     * Reads the bench from one file and the runs from another.
     *
     * @throws DataFileException when the bench can't be used
     * @throws OrderException when the runs can't
     */
    public static BucketSheet read(Path bench, Path csv, UnitSystem units) throws DataFileException, OrderException {
        BucketSheetCsv.Read read = BucketSheetCsv.read(csv);
        Runs runs = new Runs(read.runs(), read.lines(), source(csv));
        return withRuns(bench, runs, units);
    }

    /** A bench with runs that were made just now. */
    static BucketSheet withRuns(Path bench, Runs runs, UnitSystem units) throws DataFileException {
        return DataFile.read(bench, SCHEMA, node -> sheet(node, bench, units, Optional.of(runs)));
    }

    private static BucketSheet sheet(Node node, Path file, UnitSystem speak, Optional<Runs> elsewhere) {
        BucketUnits units = new BucketUnits();
        BucketBenchReader reader = new BucketBenchReader(node, units);
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
        return new BucketSheet(
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
                runs.source());
    }

    private static Runs ownRuns(Node node, BucketUnits units, Path file) {
        BucketRunReader reader = new BucketRunReader(units);
        reader.read(node.find("flows")
                .orElseThrow(() -> BucketUnits.missing(
                        node.at("sheet"), "has no flows: add them, or give the runs as a CSV sheet with --typed")));
        return new Runs(reader.runs(), reader.lines(), source(file));
    }

    private static List<BucketRecord.Condition> temperatures(List<Run> runs) {
        double least = runs.stream().mapToDouble(Run::liquidCelsius).min().orElse(Double.NaN);
        double most = runs.stream().mapToDouble(Run::liquidCelsius).max().orElse(Double.NaN);
        return least == most
                ? List.of(new BucketRecord.Condition("Liquid temperature", least, "°C"))
                : List.of(
                        new BucketRecord.Condition("Liquid temperature, lowest", least, "°C"),
                        new BucketRecord.Condition("Liquid temperature, highest", most, "°C"));
    }

    private static Declared declared(Node meter, BucketUnits units) {
        List<WorkingFlow> working = new ArrayList<>();
        for (Node flow : meter.find("working").map(Node::items).orElse(List.of())) {
            working.add(new WorkingFlow(units.requiredFlow(flow, ""), BucketBenchReader.number(flow, "share", 1)));
        }
        return BucketBenchReader.made(
                meter,
                () -> new Declared(
                        BucketBenchReader.range(units, meter, "made_for_"),
                        BucketBenchReader.range(units, meter, ""),
                        working,
                        units.flow(meter, "start_"),
                        units.k(meter, "previous_"),
                        units.k(meter, "nominal_")));
    }

    private static BucketRecord.Job job(Node node) {
        return new BucketRecord.Job(
                text(node, "customer"),
                node.find("place").map(Node::text).orElse("laboratory"),
                BucketBenchReader.day(node, "received"),
                day(node),
                node.text("technician"),
                text(node, "signer"));
    }

    private static BucketRecord.Meter meter(Node meter, BucketUnits units) {
        return new BucketRecord.Meter(
                meter.text("serial"),
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
        return BucketBenchReader.day(node, "date").orElseThrow();
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
            return source(
                    file.getFileName() == null
                            ? file.toString()
                            : file.getFileName().toString(),
                    bytes);
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
