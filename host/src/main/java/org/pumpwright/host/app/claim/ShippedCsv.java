package org.pumpwright.host.app.claim;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.statistics.Shipment;

/**
 * Reads what was shipped from a CSV file: columns {@code month} (as 2026-04), {@code count} and, where kept, {@code date_code}. Empty
 * lines and lines that begin with # are passed over. Confined to the reading thread.
 */
final class ShippedCsv {
    private static final Set<String> COLUMNS = Set.of("month", "count", "date_code");

    private final Path file;
    private final List<String> names = new ArrayList<>();
    private final Map<String, Integer> lines = new HashMap<>();
    private final List<Shipment> shipments = new ArrayList<>();

    private ShippedCsv(Path file) {
        this.file = file;
    }

    /** @throws OrderException naming file and line, when something in it cannot be read */
    static List<Shipment> read(Path file) throws OrderException {
        ShippedCsv csv = new ShippedCsv(file);
        List<String> text = text(file);
        for (int i = 0; i < text.size(); i++) {
            String line = text.get(i).strip();
            if (!line.isEmpty() && !line.startsWith("#")) {
                csv.line(line, i + 1);
            }
        }
        if (csv.shipments.isEmpty()) {
            throw new OrderException(
                    "%s: no shipment is in it. First line: month,count,date_code; then one line a month, as 2026-04,120,2615."
                            .formatted(file));
        }
        return csv.shipments;
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

    private void line(String line, int number) throws OrderException {
        List<String> cells = List.of(line.replace("\uFEFF", "").split(",", -1)).stream()
                .map(String::strip)
                .toList();
        if (names.isEmpty()) {
            head(cells, number);
            return;
        }
        if (cells.size() != names.size()) {
            throw problem(number, "%d values for %d columns".formatted(cells.size(), names.size()));
        }
        Shipment shipment = new Shipment(
                month(cells.get(names.indexOf("month")), number),
                count(cells.get(names.indexOf("count")), number),
                Optional.of(names.indexOf("date_code"))
                        .filter(place -> place >= 0)
                        .map(cells::get)
                        .filter(code -> !code.isEmpty()));
        Integer before = lines.putIfAbsent(shipment.month() + "/" + shipment.dateCode(), number);
        if (before != null) {
            throw problem(
                    number,
                    "%s%s is in line %d already: add the two counts up"
                            .formatted(
                                    shipment.month(),
                                    shipment.dateCode()
                                            .map(code -> " with date code " + code)
                                            .orElse(""),
                                    before));
        }
        shipments.add(shipment);
    }

    private void head(List<String> cells, int number) throws OrderException {
        for (String cell : cells) {
            String name = cell.toLowerCase(Locale.ROOT);
            if (!COLUMNS.contains(name) || names.contains(name)) {
                throw problem(
                        number,
                        "column '%s' is %s. Columns are month,count and, where kept, date_code, parted by commas"
                                .formatted(cell, names.contains(name) ? "there twice" : "not known"));
            }
            names.add(name);
        }
        for (String needed : List.of("month", "count")) {
            if (!names.contains(needed)) {
                throw problem(number, "column %s is missing".formatted(needed));
            }
        }
    }

    private YearMonth month(String text, int line) throws OrderException {
        try {
            return YearMonth.parse(text);
        } catch (DateTimeException e) {
            throw problem(line, "month is '%s': write year and month as 2026-04".formatted(text));
        }
    }

    private int count(String text, int line) throws OrderException {
        try {
            int count = Integer.parseInt(text);
            if (count > 0) {
                return count;
            }
        } catch (NumberFormatException e) {
            throw problem(line, "count is '%s': a whole number is needed, without a thousands sign".formatted(text));
        }
        throw problem(
                line, "count is %s: must be 1 or more; leave the line out where nothing was shipped".formatted(text));
    }

    private OrderException problem(int line, String says) {
        return new OrderException("%s:%d: %s.".formatted(file, line, says));
    }
}
