package org.pumpwright.host.app.bucket;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;

/**
 * How a scale says its reading, in plain text, over and over: no maker's protocol, a pattern of the shop's own. Thread-safe.
 *
 * @param name for people
 * @param port where it is plugged in; empty where it is given each time
 * @param baud line speed
 * @param lineEnd between two readings
 * @param pattern with the groups {@code value}, {@code unit}, and {@code stable} where the scale tells that
 * @param kilograms of the scale's words for units
 * @param stable what the group {@code stable} reads when the scale is at rest; empty where the scale does not tell
 * @param readings how many agreeing ones make a weight
 */
public record ScaleSettings(
        String name,
        Optional<String> port,
        int baud,
        String lineEnd,
        Pattern pattern,
        Map<String, Double> kilograms,
        Optional<String> stable,
        int readings) {
    private static final DataSchema SCHEMA = DataSchema.beside(ScaleSettings.class, "scale.schema.json");
    private static final Map<String, Double> KNOWN = Map.of("gram", 1e-3, "kilogram", 1.0, "pound", 0.45359237);
    private static final int USUAL_READINGS = 3;

    public ScaleSettings {
        kilograms = Map.copyOf(kilograms);
    }

    /**
     * Reads the settings.
     *
     * @throws DataFileException when the file is absent or can't be used
     */
    public static ScaleSettings read(Path file) throws DataFileException {
        return DataFile.read(file, SCHEMA, ScaleSettings::settings);
    }

    private static ScaleSettings settings(Node file) {
        Pattern pattern = pattern(file.at("pattern"));
        Map<String, Double> units = new HashMap<>();
        for (String word : List.of("g", "kg", "lb", "G", "KG", "LB", "lbs", "Kg")) {
            file.at("units").find(word).ifPresent(unit -> units.put(word, KNOWN.getOrDefault(unit.text(), 1.0)));
        }
        if (units.isEmpty()) {
            throw SheetUnits.missing(file.at("units"), "names no unit that is known: g, kg, lb, lbs, G, KG, Kg, LB");
        }
        return new ScaleSettings(
                file.text("scale"),
                file.find("port").map(Node::text),
                file.whole("baud"),
                switch (file.text("line_ending")) {
                    case "cr" -> "\r";
                    case "lf" -> "\n";
                    default -> "\r\n";
                },
                pattern,
                units,
                file.find("stable").map(Node::text),
                file.find("readings").map(node -> file.whole("readings")).orElse(USUAL_READINGS));
    }

    private static Pattern pattern(Node node) {
        try {
            Pattern pattern = Pattern.compile(node.text());
            if (!node.text().contains("(?<value>") || !node.text().contains("(?<unit>")) {
                throw SheetUnits.missing(node, "needs the groups (?<value>...) and (?<unit>...)");
            }
            return pattern;
        } catch (PatternSyntaxException e) {
            throw SheetUnits.missing(node, "is no regular expression: " + e.getDescription());
        }
    }

    /** What one line says. */
    record Said(double kilograms, boolean steady) {}

    /** The reading of a line; empty when it is none. */
    Optional<Said> read(String line) {
        Matcher found = pattern.matcher(line.strip());
        if (!found.matches()) {
            return Optional.empty();
        }
        Double perUnit = kilograms.get(found.group("unit"));
        OptionalDouble value = number(found.group("value"));
        if (perUnit == null || value.isEmpty()) {
            return Optional.empty();
        }
        boolean steady = stable.isEmpty() || stable.get().equals(found.group("stable"));
        return Optional.of(new Said(value.getAsDouble() * perUnit, steady));
    }

    private static OptionalDouble number(String text) {
        try {
            return OptionalDouble.of(Double.parseDouble(text.replace(" ", "")));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }
}
