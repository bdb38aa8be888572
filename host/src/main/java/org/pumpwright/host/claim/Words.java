package org.pumpwright.host.claim;

import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Choices as words: small letters with dashes, in files, on the command line and in the keys of texts. Thread-safe. */
final class Words {
    private Words() {}

    static String of(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The choice with this word.
     *
     * @param what what it is a choice of, for the message
     * @throws IllegalArgumentException naming the words that are known
     */
    static <E extends Enum<E>> E choice(Class<E> choices, String what, String word) {
        for (E choice : choices.getEnumConstants()) {
            if (of(choice).equalsIgnoreCase(word.strip())) {
                return choice;
            }
        }
        throw new IllegalArgumentException("there is no %s '%s'. Known are: %s."
                .formatted(
                        what,
                        word,
                        Arrays.stream(choices.getEnumConstants()).map(Words::of).collect(Collectors.joining(", "))));
    }

    /** A text that must be there: a name, a reason. */
    static String given(String what, String text) {
        return bounded(what, text, 1);
    }

    /** A text that may be empty. */
    static String bounded(String what, String text) {
        return bounded(what, text, 0);
    }

    private static String bounded(String what, String text, int least) {
        int length = text.strip().length();
        if (length < least) {
            throw new IllegalArgumentException(what + " is empty, it must be given");
        }
        if (length > MOST_CHARACTERS) {
            throw new IllegalArgumentException(
                    "%s has %d characters, at most %d are kept".formatted(what, length, MOST_CHARACTERS));
        }
        return text.strip();
    }

    /** Longer texts belong on a sheet of their own. */
    private static final int MOST_CHARACTERS = 4000;

    /** A time to the second, as it is kept. */
    static OffsetDateTime second(OffsetDateTime at) {
        return at.withNano(0);
    }
}
