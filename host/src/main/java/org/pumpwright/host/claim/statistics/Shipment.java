package org.pumpwright.host.claim.statistics;

import java.time.YearMonth;
import java.util.Optional;

/**
 * So many units shipped in a month. Thread-safe.
 *
 * @param month of shipping
 * @param count 1 or more
 * @param dateCode of all of them; empty where the shop does not keep it apart
 */
public record Shipment(YearMonth month, int count, Optional<String> dateCode) {
    public Shipment {
        if (count < 1) {
            throw new IllegalArgumentException("%s: %d units shipped, must be 1 or more".formatted(month, count));
        }
    }

    /** What the units are called together: the date code, or the month where there is none. */
    public String batch() {
        return dateCode.orElseGet(month::toString);
    }
}
