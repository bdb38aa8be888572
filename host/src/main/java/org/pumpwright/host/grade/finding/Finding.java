package org.pumpwright.host.grade.finding;

import org.pumpwright.host.quantity.Uncertain;

/**
 * One thing that a step of a plan has read. Thread-safe.
 *
 * @param step the plan's step
 * @param name what was read
 * @param outcome the figure, or the word where there is none
 * @param note what belongs to it, for people; may be empty
 */
public record Finding(String step, String name, Outcome outcome, String note) {
    /** What came of a reading. */
    public sealed interface Outcome permits Figure, Word {}

    /**
     * A figure.
     *
     * @param value with standard uncertainty (k = 1)
     * @param unit of the value
     */
    public record Figure(Uncertain value, FindingUnit unit) implements Outcome {}

    /** A reading that is no figure, or could not be taken. */
    public record Word(String word) implements Outcome {}

    static Finding figure(String step, String name, Uncertain value, FindingUnit unit, String note) {
        return new Finding(step, name, new Figure(value, unit), note);
    }

    static Finding word(String step, String name, String word, String note) {
        return new Finding(step, name, new Word(word), note);
    }
}
