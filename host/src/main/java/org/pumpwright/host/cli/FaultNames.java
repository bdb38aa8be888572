package org.pumpwright.host.cli;

import java.util.Arrays;
import java.util.Iterator;
import java.util.Locale;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.plant.Severity;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The faults and severities of simulated units by their shop words. */
final class FaultNames implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
        return Arrays.stream(UnitKind.values())
                .flatMap(kind -> PracticeUnit.faults(kind).stream())
                .map(Fault::word)
                .distinct()
                .iterator();
    }

    /** Reads a severity. */
    static final class Severities implements ITypeConverter<Severity> {
        @Override
        public Severity convert(String word) {
            return Arrays.stream(Severity.values())
                    .filter(severity -> severity.name().equalsIgnoreCase(word))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException(
                            "there is no severity '%s'. Known are: %s.".formatted(word, names())));
        }

        private static String names() {
            return String.join(
                    ", ",
                    Arrays.stream(Severity.values())
                            .map(severity -> severity.name().toLowerCase(Locale.ROOT))
                            .toList());
        }
    }
}
