package org.pumpwright.host.grade;

import org.pumpwright.host.quantity.Duty;

/**
 * One thing that is judged: a quantity at a set point. Thread-safe.
 *
 * @param quantity what is judged
 * @param duty at which set point
 */
public record Feature(Kind quantity, Duty duty) {
    /** What is judged, with its SI unit. */
    public enum Kind {
        /** Flow, m3/s. */
        FLOW("flow"),
        /** Motor current, A: supply current over duty. */
        MOTOR_AMPS("motor amps");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The feature for people, e.g. {@code flow at 50 %}. */
    public String words() {
        return quantity.words() + " at " + duty.print();
    }
}
