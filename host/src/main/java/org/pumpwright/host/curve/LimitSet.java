package org.pumpwright.host.curve;

import java.util.List;
import java.util.OptionalDouble;
import org.pumpwright.host.quantity.Require;

/**
 * Limits that come from what a unit must do, not from what healthy units do: what the machine needs, or what the maker
 * states. Kept beside the healthy band under a name of its own and never mixed with it. Thread-safe.
 *
 * @param name for people, unlike that of any other set of the curve
 * @param source where the numbers come from
 * @param setBy the person who set them
 * @param guardFactor how many standard uncertainties a value must lie inside to pass and outside to fail
 * @param limits at least one
 */
public record LimitSet(String name, String source, String setBy, double guardFactor, List<Limit> limits) {
    public LimitSet {
        Require.inRange("guard factor", guardFactor, 0, 10, "");
        limits = List.copyOf(limits);
        if (limits.isEmpty()) {
            throw new IllegalArgumentException("limit set '%s' has no limits".formatted(name));
        }
    }

    /**
     * The range of one quantity at one value of effective volts; an end that is empty is open. Thread-safe.
     *
     * @param quantity what is limited
     * @param effectiveVolts V
     * @param low least value, m3/s or A
     * @param high largest value, m3/s or A
     */
    public record Limit(Quantity quantity, double effectiveVolts, OptionalDouble low, OptionalDouble high) {
        public Limit {
            if (low.isEmpty() && high.isEmpty()) {
                throw new IllegalArgumentException("the limit of the %s at %s V has neither low nor high"
                        .formatted(quantity.word(), effectiveVolts));
            }
            if (low.orElse(Double.NEGATIVE_INFINITY) > high.orElse(Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "the limit of the %s at %s V begins above its end".formatted(quantity.word(), effectiveVolts));
            }
        }
    }

    /** What can be limited. */
    public enum Quantity {
        /** Flow, m3/s. */
        FLOW("flow"),
        /** Motor current, A. */
        MOTOR_AMPS("motor-amps");

        private final String word;

        Quantity(String word) {
            this.word = word;
        }

        /** The word in files. */
        public String word() {
            return word;
        }
    }
}
