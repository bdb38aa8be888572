package org.pumpwright.host.grade;

import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.trace.Leg;

/**
 * One thing that is held against limits: a quantity at a point of a sweep, or a reading of a step. Thread-safe.
 *
 * @param key the same for the same thing in every run, e.g. {@code flow/up/50 %}
 * @param words for people, e.g. {@code flow at 50 %}
 * @param quantity what kind of thing
 * @param unit of its values
 * @param place where in the sweep; empty for what belongs to no point
 */
public record Feature(String key, String words, Kind quantity, FindingUnit unit, Optional<Place> place) {
    /** What is judged. */
    public enum Kind {
        /** Flow at a point, m3/s. */
        FLOW("flow"),
        /** Motor current at a point, A: supply current over duty. */
        MOTOR_AMPS("motor amps"),
        /** Anything that a step has read. */
        READING("reading");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * A place in a sweep.
     *
     * @param duty set point
     * @param leg which way the sweep was going; empty where a record does not tell
     */
    public record Place(Duty duty, Optional<Leg> leg) {}

    /** Flow or motor current at a point. */
    public static Feature at(Kind quantity, Duty duty, Leg leg) {
        return at(quantity, new Place(duty, Optional.of(leg)));
    }

    /** Flow or motor current at a point whose leg may not be known. */
    public static Feature at(Kind quantity, Place place) {
        FindingUnit unit = switch (quantity) {
            case FLOW -> FindingUnit.M3_PER_SECOND;
            case MOTOR_AMPS -> FindingUnit.AMPS;
            case READING -> throw new IllegalArgumentException("a reading has no place in a sweep");
        };
        String leg =
                place.leg().map(each -> each.name().toLowerCase(Locale.ROOT)).orElse("?");
        String key = quantity.words() + "/" + leg + "/" + place.duty().print();
        return new Feature(key, quantity.words() + " at " + place.duty().print(), quantity, unit, Optional.of(place));
    }

    /** A reading of a step. */
    public static Feature reading(String step, String name, FindingUnit unit) {
        return new Feature(step + "/" + name, name, Kind.READING, unit, Optional.empty());
    }

    /**
     * The set point.
     *
     * @throws IllegalStateException when the feature belongs to no point
     */
    public Duty duty() {
        return place.orElseThrow(() -> new IllegalStateException(words + " belongs to no point of a sweep"))
                .duty();
    }

    /** True for a point of the way up. */
    public boolean onTheWayUp() {
        return place.flatMap(Place::leg).filter(Leg.UP::equals).isPresent();
    }
}
