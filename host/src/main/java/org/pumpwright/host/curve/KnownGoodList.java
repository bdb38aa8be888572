package org.pumpwright.host.curve;

import java.time.LocalDate;
import java.util.Map;

/**
 * A person's word that units are good, for reasons that lie outside this program: new, or proven in the field. A unit that
 * only passed here is not known to be good, or limits would follow the units that they let through. Thread-safe.
 *
 * @param declaredBy the person
 * @param declaredOn the day
 * @param model the units' model
 * @param reasons by serial number
 */
public record KnownGoodList(String declaredBy, LocalDate declaredOn, String model, Map<String, String> reasons) {
    public KnownGoodList {
        reasons = Map.copyOf(reasons);
        if (declaredBy.isBlank()) {
            throw new IllegalArgumentException("units are declared good by a named person, the name is blank");
        }
    }

    /** Whether the list says that this unit is good. */
    public boolean holds(String serial) {
        return reasons.containsKey(serial.strip());
    }
}
