package org.pumpwright.host.ui.work;

import java.util.List;
import org.pumpwright.host.quantity.UnitSystem;

/**
 * Something to be said in the language and the units of the moment. Thread-safe.
 *
 * @param key of the text; empty for something that is the same in every language, such as a serial number
 * @param values what goes where its gaps are: a {@link Word}, a {@link Measured} and a {@link Stored} follow language and units, anything
 *     else is said as it is
 */
public record Word(String key, List<Object> values) {
    /** A quantity that a person reads in the units of the moment; {@code pressure::print} is one. */
    @FunctionalInterface
    public interface Measured {
        /** The quantity with its unit. */
        String print(UnitSystem units);
    }

    /** A sentence that a record keeps in English; it is said in the language of the moment where that has words for it. */
    public record Stored(String english) {}

    /** Nothing at all. */
    public static final Word NONE = asIs("");

    public Word {
        values = List.copyOf(values);
    }

    /** The text with this key. */
    public static Word of(String key, Object... values) {
        return new Word(key, List.of(values));
    }

    /** The same in every language. */
    public static Word asIs(String text) {
        return new Word("", List.of(text));
    }

    /** A sentence that a record keeps in English. */
    public static Word stored(String english) {
        return new Word("", List.of(new Stored(english)));
    }

    /** A quantity in the units of the moment. */
    public static Word of(Measured quantity) {
        return new Word("", List.of(quantity));
    }
}
