package org.pumpwright.host.claim;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;

/**
 * How makers write the date of manufacture on a plate, for the models of which the shop knows it. Thread-safe.
 *
 * @param codes one for a model
 */
public record DateCodesFile(List<DateCode> codes) {
    private static final DataSchema SCHEMA = DataSchema.beside(DateCodesFile.class, "date-codes.schema.json");

    public DateCodesFile {
        codes = List.copyOf(codes);
    }

    /** The digits of a code; years are of this century. */
    public enum Format {
        /** Year, then week of ISO 8601. */
        YYWW,
        /** Week of ISO 8601, then year. */
        WWYY,
        YYMM,
        MMYY
    }

    /**
     * How one model's code is written.
     *
     * @param model its id
     * @param format the code's digits
     * @param inSerial finds the same digits in the serial number, in the first group; empty where they are not in it
     */
    public record DateCode(String model, Format format, Optional<Pattern> inSerial) {
        private static final Pattern FOUR_DIGITS = Pattern.compile("(\\d\\d)(\\d\\d)");
        private static final int CENTURY = 2000;

        /** The first day of the week or month that a code names; empty when it names none. */
        public Optional<LocalDate> begins(String code) {
            Matcher digits = FOUR_DIGITS.matcher(code.strip());
            if (!digits.matches()) {
                return Optional.empty();
            }
            int first = Integer.parseInt(digits.group(1));
            int second = Integer.parseInt(digits.group(2));
            try {
                return Optional.of(
                        switch (format) {
                            case YYWW -> week(first, second);
                            case WWYY -> week(second, first);
                            case YYMM -> YearMonth.of(CENTURY + first, second).atDay(1);
                            case MMYY -> YearMonth.of(CENTURY + second, first).atDay(1);
                        });
            } catch (DateTimeException e) {
                return Optional.empty();
            }
        }

        private static LocalDate week(int year, int week) {
            // The fourth of January is always in the first week.
            LocalDate inTheFirst = LocalDate.of(CENTURY + year, 1, 4);
            if (!IsoFields.WEEK_OF_WEEK_BASED_YEAR.rangeRefinedBy(inTheFirst).isValidValue(week)) {
                throw new DateTimeException("no such week");
            }
            return inTheFirst.with(IsoFields.WEEK_OF_WEEK_BASED_YEAR, week).with(java.time.DayOfWeek.MONDAY);
        }

        /** The digits that the serial number holds; empty when it holds none, or is not known to. */
        public Optional<String> of(String serial) {
            return inSerial.map(pattern -> pattern.matcher(serial))
                    .filter(Matcher::find)
                    .map(found -> found.group(1));
        }
    }

    /**
     * Reads the codes.
     *
     * @throws DataFileException when the file is absent or does not hold them
     */
    public static DateCodesFile read(Path file) throws DataFileException {
        return DataFile.read(
                file,
                SCHEMA,
                root -> new DateCodesFile(root.at("date_codes").items().stream()
                        .map(node -> new DateCode(
                                node.text("model"),
                                Format.valueOf(node.text("format").toUpperCase(Locale.ROOT)),
                                node.find("in_serial").flatMap(DateCodesFile::pattern)))
                        .toList()));
    }

    private static Optional<Pattern> pattern(Node node) {
        try {
            Pattern pattern = Pattern.compile(node.text());
            if (pattern.matcher("").groupCount() == 1) {
                return Optional.of(pattern);
            }
            node.refuse("is %s, allowed is a pattern with one group, which holds the digits".formatted(node.found()));
        } catch (PatternSyntaxException e) {
            node.refuse("is %s, which is no pattern: %s".formatted(node.found(), e.getDescription()));
        }
        return Optional.empty();
    }

    /** How this model's code is written; empty when the shop does not know. */
    public Optional<DateCode> of(String model) {
        return codes.stream().filter(code -> code.model().equals(model)).findFirst();
    }
}
