package org.pumpwright.host.claim;

import java.util.Optional;
import org.pumpwright.host.quantity.Require;

/**
 * Whether product is still in the unit. Until it was rinsed it is treated as containing product. Thread-safe.
 *
 * @param declared whether the customer says that it was rinsed; empty when nobody asked
 * @param confirmedBy who of the shop has rinsed it, or made sure; empty until then
 * @param rinses how many times it was rinsed with clean water
 */
public record Decontamination(Optional<Boolean> declared, Optional<String> confirmedBy, int rinses) {
    private static final int MOST_RINSES = 50;

    /** Nobody asked, nobody rinsed. */
    public static final Decontamination NONE = new Decontamination(Optional.empty(), Optional.empty(), 0);

    public Decontamination {
        confirmedBy = confirmedBy.map(String::strip).filter(name -> !name.isEmpty());
        Require.inRange("rinses", rinses, 0, MOST_RINSES, "");
    }

    /** Whether a person of the shop has made sure. */
    public boolean confirmed() {
        return confirmedBy.isPresent();
    }

    /** The same, confirmed. */
    public Decontamination confirmedBy(String person, int times) {
        return new Decontamination(declared, Optional.of(Words.given("who confirms", person)), times);
    }
}
