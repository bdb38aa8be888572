package org.pumpwright.host.cli;

import java.util.Arrays;
import java.util.Iterator;
import java.util.Locale;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.Severity;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The faults and severities of simulated units by their shop words. */
final class FaultNames implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
        return Arrays.stream(PumpFault.values()).map(PumpFault::word).iterator();
    }

    /** Reads a fault's word. */
    static final class Faults implements ITypeConverter<PumpFault> {
        @Override
        public PumpFault convert(String word) {
            return Arrays.stream(PumpFault.values())
                    .filter(fault -> fault.word().equalsIgnoreCase(word))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException("there is no fault '%s'. Known are: %s."
                            .formatted(word, String.join(", ", new FaultNames()))));
        }
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
