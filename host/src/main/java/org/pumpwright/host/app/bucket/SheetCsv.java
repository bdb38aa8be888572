package org.pumpwright.host.app.bucket;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.calibrate.Leg;
import org.pumpwright.host.calibrate.Reading;
import org.pumpwright.host.calibrate.Run;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Volume;

/**
 * Reads runs from a CSV sheet, one a line, with the units in the names of the columns. Nothing is guessed: a column without a unit, two
 * units for one amount and a decimal comma are refused with the line. Confined to the reading thread.
 */
final class SheetCsv {
    private static final Map<String, Double> MASS = Map.of("g", 1e-3, "kg", 1.0, "lb", 0.45359237);
    private static final Map<String, Double> VOLUME = Map.of("l", 1e-3, "gal", Volume.M3_PER_US_GALLON);
    private static final Map<String, Double> FLOW =
            Map.of("gpm", FlowRate.ofGallonsPerMinute(1).m3PerSecond(), "lpm", 1.0 / 60_000);
    private static final Map<String, Map<String, Double>> AMOUNTS = new LinkedHashMap<>();
    private static final Set<String> PLAIN = Set.of("run", "leg", "pulses", "master_pulses", "left_out");
    private static final String FAHRENHEIT = "f";
    private static final double FREEZING_FAHRENHEIT = 32;

    static {
        AMOUNTS.put("flow", FLOW);
        AMOUNTS.put("tare", MASS);
        AMOUNTS.put("gross", MASS);
        AMOUNTS.put("net", MASS);
        AMOUNTS.put("volume", VOLUME);
        AMOUNTS.put("time", Map.of("s", 1.0, "min", 60.0));
        AMOUNTS.put("water", Map.of("c", 1.0, FAHRENHEIT, 1 / 1.8));
    }

    private final Path file;
    private final Map<String, Integer> columns = new HashMap<>();
    private final Map<String, String> units = new HashMap<>();
    private final List<Run> runs = new ArrayList<>();
    private final Map<Integer, Integer> lines = new HashMap<>();

    /** The runs, and their lines by the runs' numbers. */
    record Read(List<Run> runs, Map<Integer, Integer> lines) {}

    private SheetCsv(Path file) {
        this.file = file;
    }

    static Read read(Path file) throws OrderException {
        SheetCsv sheet = new SheetCsv(file);
        List<String> text = text(file);
        boolean headed = false;
        for (int i = 0; i < text.size(); i++) {
            String line = text.get(i).strip();
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            if (headed) {
                sheet.row(line, i + 1);
            } else {
                sheet.head(line, i + 1);
                headed = true;
            }
        }
        if (sheet.runs.isEmpty()) {
            throw new OrderException(
                    "%s: there is no run in it. 'pumpwright bucket new-sheet runs.csv' writes one to fill in."
                            .formatted(file));
        }
        return new Read(sheet.runs, sheet.lines);
    }

    private static List<String> text(Path file) throws OrderException {
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (NoSuchFileException e) {
            throw new OrderException("%s: is not there: check the name and the folder".formatted(file));
        } catch (CharacterCodingException e) {
            throw new OrderException("%s: is not UTF-8 text: save it again as UTF-8".formatted(file));
        } catch (IOException e) {
            throw new OrderException("%s: cannot be read: %s".formatted(file, e.getMessage()));
        }
    }

    private void head(String line, int number) throws OrderException {
        if (line.contains(";")) {
            throw problem(
                    number,
                    "columns are parted by semicolons, commas are needed. Save it as CSV with a comma between"
                            + " columns and a point in decimals");
        }
        List<String> names = cells(line);
        for (int i = 0; i < names.size(); i++) {
            column(names.get(i).toLowerCase(Locale.ROOT), i, number);
        }
        for (String needed : List.of("flow", "pulses", "time", "water")) {
            if (!columns.containsKey(needed)) {
                throw problem(number, "column %s is missing".formatted(example(needed)));
            }
        }
    }

    private void column(String name, int place, int line) throws OrderException {
        if (PLAIN.contains(name)) {
            put(name, "", place, line);
            return;
        }
        for (Map.Entry<String, Map<String, Double>> amount : AMOUNTS.entrySet()) {
            if (name.equals(amount.getKey())) {
                throw problem(line, "column '%s' has no unit: write %s".formatted(name, example(amount.getKey())));
            }
            if (name.startsWith(amount.getKey() + "_")) {
                String unit = name.substring(amount.getKey().length() + 1);
                if (!amount.getValue().containsKey(unit)) {
                    throw problem(
                            line,
                            "column '%s' has the unit '%s', which is not known: write %s"
                                    .formatted(name, unit, example(amount.getKey())));
                }
                put(amount.getKey(), unit, place, line);
                return;
            }
        }
        throw problem(
                line,
                "column '%s' is not known. Known are: run, flow_gpm, leg, tare_g, gross_g, net_g, volume_l, pulses,"
                                .formatted(name)
                        + " master_pulses, time_s, water_c, left_out");
    }

    private void put(String name, String unit, int place, int line) throws OrderException {
        if (columns.put(name, place) != null) {
            throw problem(
                    line,
                    "%s is there twice, in %s and in %s: units are mixed. Keep one column"
                            .formatted(name, units.get(name), unit));
        }
        units.put(name, unit);
        for (String other : List.of("tare", "gross", "net")) {
            if (MASS.containsKey(unit)
                    && units.containsKey(other)
                    && !units.get(other).equals(unit)) {
                throw problem(
                        line,
                        "%s is in %s and %s in %s: units are mixed. Keep to one of them"
                                .formatted(other, units.get(other), name, unit));
            }
        }
    }

    private static String example(String name) {
        Map<String, Double> known = AMOUNTS.get(name);
        return known == null
                ? name
                : String.join(
                        " or ",
                        known.keySet().stream()
                                .sorted()
                                .map(unit -> name + "_" + unit)
                                .toList());
    }

    private void row(String line, int number) throws OrderException {
        List<String> cells = cells(line);
        if (cells.size() != columns.size()) {
            throw problem(
                    number,
                    cells.size() > columns.size()
                            ? "%d values for %d columns: a decimal comma parts a value in two. Write decimals with a point, as in 18.4"
                                    .formatted(cells.size(), columns.size())
                            : "%d values for %d columns: leave an empty place between two commas where there is none"
                                    .formatted(cells.size(), columns.size()));
        }
        int run = text(cells, "run").isPresent() ? (int) required(cells, "run", number) : runs.size() + 1;
        if (lines.putIfAbsent(run, number) != null) {
            throw problem(number, "run %d is there twice: give each run a number of its own".formatted(run));
        }
        try {
            runs.add(new Run(
                    run,
                    new FlowRate(required(cells, "flow", number)),
                    leg(cells, number),
                    required(cells, "pulses", number),
                    required(cells, "time", number),
                    required(cells, "water", number),
                    reading(cells, number),
                    text(cells, "left_out")));
        } catch (IllegalArgumentException e) {
            throw problem(number, String.valueOf(e.getMessage()));
        }
    }

    private Leg leg(List<String> cells, int line) throws OrderException {
        String word = text(cells, "leg").orElse("main");
        if (!Set.of("main", "back", "first-again").contains(word)) {
            throw problem(line, "leg is '%s', allowed are main, back, first-again".formatted(word));
        }
        return RunReader.leg(word);
    }

    private Reading reading(List<String> cells, int line) throws OrderException {
        if (text(cells, "net").isPresent()) {
            return new Reading.Weights(0, required(cells, "net", line));
        }
        if (text(cells, "gross").isPresent()) {
            return new Reading.Weights(required(cells, "tare", line), required(cells, "gross", line));
        }
        if (text(cells, "volume").isPresent()) {
            return new Reading.Level(required(cells, "volume", line));
        }
        if (text(cells, "master_pulses").isPresent()) {
            return new Reading.MasterPulses(required(cells, "master_pulses", line));
        }
        throw problem(line, "nothing that was caught: fill in net_g, or tare_g and gross_g, volume_l or master_pulses");
    }

    private double required(List<String> cells, String name, int line) throws OrderException {
        String text =
                text(cells, name).orElseThrow(() -> problem(line, "%s is empty: fill it in".formatted(written(name))));
        if (text.contains(",")) {
            throw problem(
                    line,
                    "%s is '%s': write decimals with a point and no thousands sign, as in %s"
                            .formatted(written(name), text, text.replace(',', '.')));
        }
        try {
            double value = Double.parseDouble(text);
            String unit = units.getOrDefault(name, "");
            if (name.equals("water") && unit.equals(FAHRENHEIT)) {
                return (value - FREEZING_FAHRENHEIT) / 1.8;
            }
            return value * AMOUNTS.getOrDefault(name, Map.of()).getOrDefault(unit, 1.0);
        } catch (NumberFormatException e) {
            throw problem(line, "%s is '%s', a number is needed".formatted(written(name), text));
        }
    }

    private String written(String name) {
        String unit = units.getOrDefault(name, "");
        return unit.isEmpty() ? name : name + "_" + unit;
    }

    private Optional<String> text(List<String> cells, String name) {
        return Optional.ofNullable(columns.get(name)).map(cells::get).filter(cell -> !cell.isEmpty());
    }

    /** Cells between commas; one in double quotes may hold commas. */
    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().strip());
                cell = new StringBuilder();
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    private OrderException problem(int line, String says) {
        return new OrderException("%s:%d: %s.".formatted(file, line, says));
    }
}
