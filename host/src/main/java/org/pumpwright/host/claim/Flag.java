package org.pumpwright.host.claim;

import java.util.List;

/**
 * Something a person should look at. It says what is so, and accuses nobody. The text is {@code claim.flag.WORD}, with the
 * values in its gaps. Thread-safe.
 *
 * @param code what
 * @param values what the text names, in order
 */
public record Flag(Code code, List<String> values) {
    public Flag {
        values = List.copyOf(values);
    }

    /** The flag as a sentence. */
    public Sentence sentence() {
        return new Sentence("claim.flag." + code.word(), values);
    }

    /** What is looked for. Common practice, no source. */
    public enum Code {
        /** The serial number was here before. */
        SERIAL_SEEN,
        /** The serial number is on record under another model. */
        SERIAL_TWO_MODELS,
        /** Two runs have the very same samples. */
        SAME_TRACE,
        /** A later entry has an earlier time. */
        CLOCK_MOVED,
        /** Curve or limits are not those of the first test any more. */
        LIMITS_CHANGED,
        /** A picture is older than the day the unit came. */
        PHOTO_OLDER,
        /** The date code does not fit the serial number or the day of sale. */
        DATE_CODE,
        /** Fewer hours or acres than the last time. */
        HOURS_LOWER;

        /** The word in files and keys. */
        public String word() {
            return Words.of(this);
        }
    }
}
