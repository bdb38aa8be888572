package org.pumpwright.host.claim;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The unit as it was handed over. Empty texts are what nobody has written down yet. Thread-safe.
 *
 * @param kind word of its kind, such as {@code pump-12v}
 * @param model id of its model
 * @param serial as read from the plate, or {@code no plate}
 * @param dateCode the maker's date code as it stands on the plate
 * @param accessories what came with it; {@code none} when nothing did
 * @param seal the state of the maker's seal, in words
 * @param tag number of the tag on its container
 */
public record UnitAsReceived(
        String kind,
        String model,
        String serial,
        Optional<String> dateCode,
        String accessories,
        String seal,
        String tag) {
    /** What is written for a unit whose plate is gone. It is an answer, not a blank. */
    public static final String NO_PLATE = "no plate";

    private static final Set<String> NO_SERIALS = Set.of("", "not given", NO_PLATE);

    public UnitAsReceived {
        kind = Words.bounded("kind", kind);
        model = Words.bounded("model", model);
        serial = Words.bounded("serial", serial);
        dateCode = dateCode.map(String::strip).filter(code -> !code.isEmpty());
        accessories = Words.bounded("accessories", accessories);
        seal = Words.bounded("seal", seal);
        tag = Words.bounded("tag", tag);
    }

    /** Whether units can be told apart by the serial. */
    public boolean hasSerial() {
        return !NO_SERIALS.contains(serial.toLowerCase(Locale.ROOT));
    }

    /** Whether a serial from elsewhere is this unit's. Two units without a plate are never known to be the same one. */
    public boolean isSerial(String other) {
        return serial.equalsIgnoreCase(other.strip());
    }
}
