package org.pumpwright.host.plant;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Several faults on one unit and its stand at once, put on in their order. Written as {@code slip:severe+low-supply},
 * a fault without a severity being moderate. Thread-safe.
 *
 * @param parts the faults, at least one
 */
public record FaultMix(List<Part> parts) implements Fault {

    /**
     * One fault of a mix.
     *
     * @param fault which
     * @param severity how much
     */
    public record Part(PumpFault fault, Severity severity) {}

    /**
     * @throws IllegalArgumentException when empty, or when the same fault is given twice
     */
    public FaultMix {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a mix needs at least one fault");
        }
        if (parts.stream().map(Part::fault).distinct().count() < parts.size()) {
            throw new IllegalArgumentException("a fault may be given only once");
        }
    }

    /** A single fault. */
    public static FaultMix of(PumpFault fault, Severity severity) {
        return new FaultMix(List.of(new Part(fault, severity)));
    }

    /**
     * Reads the words.
     *
     * @throws IllegalArgumentException naming a word that is no fault or no severity
     */
    public static FaultMix parse(String words) {
        return new FaultMix(
                Arrays.stream(words.split("\\+", -1)).map(FaultMix::part).toList());
    }

    /** The unit and stand with all of the faults. */
    public PumpParameters applyTo(PumpParameters p) {
        PumpParameters faulty = p;
        for (Part part : parts) {
            faulty = part.fault().applyTo(faulty, part.severity());
        }
        return faulty;
    }

    @Override
    public String word() {
        return toString();
    }

    @Override
    public boolean ofTheStand() {
        return parts.stream().allMatch(part -> part.fault().ofTheStand());
    }

    /** What is wrong, one sentence for each fault. */
    @Override
    public String sentence() {
        return parts.stream().map(part -> part.fault().sentence()).collect(Collectors.joining(" "));
    }

    /** The words that {@link #parse} reads. */
    @Override
    public String toString() {
        return parts.stream()
                .map(part -> part.fault().word() + ":" + word(part.severity()))
                .collect(Collectors.joining("+"));
    }

    private static Part part(String words) {
        String[] both = words.strip().split(":", 2);
        PumpFault fault = Arrays.stream(PumpFault.values())
                .filter(each -> each.word().equalsIgnoreCase(both[0]))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no fault '" + both[0] + "'"));
        return new Part(fault, both.length == 1 ? Severity.MODERATE : severity(both[1]));
    }

    private static Severity severity(String word) {
        return Arrays.stream(Severity.values())
                .filter(each -> word(each).equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "there is no severity '" + word + "': mild, moderate and severe are known"));
    }

    private static String word(Severity severity) {
        return severity.name().toLowerCase(Locale.ROOT);
    }
}
