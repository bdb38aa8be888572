package org.pumpwright.protocol;

/**
 * A field of a message has a value its range does not allow. The text gives field, value and range; the same facts can
 * be asked for. Immutable and thread-safe.
 */
public final class FieldOutOfRange extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final int number;
    private final String field;
    private final long value;

    private FieldOutOfRange(int number, String field, long value, String range) {
        super(field + " " + value + " is outside " + range);
        this.number = number;
        this.field = field;
        this.value = value;
    }

    /**
     * Lets a value pass that lies within its range.
     *
     * @param number the field's place in its record, from 1, in the order of the wire
     * @param field the field in plain words, with its message
     * @param unit what the numbers count, or what they are
     * @throws FieldOutOfRange when the value lies outside
     */
    static void check(int number, String field, long value, long lowest, long highest, String unit) {
        if (value < lowest || value > highest) {
            throw of(number, field, value, lowest, highest, unit);
        }
    }

    /** The refusal of a value that is known to lie outside. */
    static FieldOutOfRange of(int number, String field, long value, long lowest, long highest, String unit) {
        return new FieldOutOfRange(number, field, value, lowest + ".." + highest + " (" + unit + ")");
    }

    /** The field's place in its record, from 1, in the order of the wire. */
    public int number() {
        return number;
    }

    /** The field in plain words. */
    public String field() {
        return field;
    }

    /** The value that was refused. */
    public long value() {
        return value;
    }
}
