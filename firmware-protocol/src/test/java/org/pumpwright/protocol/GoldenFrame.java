package org.pumpwright.protocol;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One line of {@code fixtures/frames/golden.txt}. */
record GoldenFrame(String outcome, String name, Octets frame, Map<String, String> fields) {
    private static final int COLUMNS = 5;

    static List<GoldenFrame> all() {
        Path file = Path.of(System.getProperty("pumpwright.root"), "fixtures", "frames", "golden.txt");
        try {
            return Files.readAllLines(file).stream()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(GoldenFrame::parse)
                    .toList();
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    static List<GoldenFrame> good() {
        return all().stream().filter(GoldenFrame::isGood).toList();
    }

    static List<GoldenFrame> bad() {
        return all().stream().filter(golden -> !golden.isGood()).toList();
    }

    boolean isGood() {
        return "good".equals(outcome);
    }

    int sequence() {
        return Integer.parseInt(fields.get("sequence"));
    }

    @Override
    public String toString() {
        return name;
    }

    private static GoldenFrame parse(String line) {
        String[] columns = line.split(" \\| ", -1);
        if (columns.length != COLUMNS) {
            throw new IllegalStateException("not " + COLUMNS + " columns: " + line);
        }
        byte[] frame = HexFormat.ofDelimiter(" ").parseHex(columns[2]);
        return new GoldenFrame(columns[0], columns[1], Octets.of(frame), fields(columns[3]));
    }

    private static Map<String, String> fields(String column) {
        Map<String, String> fields = new LinkedHashMap<>();
        if (!"-".equals(column)) {
            for (String field : column.split(" ")) {
                String[] pair = field.split("=", -1);
                fields.put(pair[0], pair[1]);
            }
        }
        return fields;
    }
}
