package org.pumpwright.host.claim;

import java.time.OffsetDateTime;

/**
 * What a person saw on a unit, or a note to its claim. Thread-safe.
 *
 * @param seen what, as one of the usual things
 * @param words in the person's own words; may be empty for a usual thing
 * @param person who
 * @param at when
 */
public record Observation(Seen seen, String words, String person, OffsetDateTime at) {
    public Observation {
        words = seen == Seen.NOTE ? Words.given("note", words) : Words.bounded("words", words);
        person = Words.given("person", person);
        at = Words.second(at);
    }

    /** The usual things, each noted with one word. The text's key is {@code claim.seen.WORD}. Common practice, no source. */
    public enum Seen {
        /** It was seized when it came, and a rinse with warm water freed it: an observation of storage. */
        FREED_BY_RINSE,
        DEBRIS_FOUND,
        /** It came without any liquid in it. */
        DRY,
        /** Liquid was in the motor. */
        WET_MOTOR,
        OIL_IN_PRODUCT,
        CRACKED_HEAD,
        EXTERNAL_LEAK,
        SHORT_TO_CASE,
        /** What was found on the planter: harness, supply, settings. */
        PLANTER_CHECK,
        /** Anything else, in words. */
        NOTE;

        /** The word in files and on the command line. */
        public String word() {
            return Words.of(this);
        }

        /** Key of its text. */
        public String key() {
            return "claim.seen." + word();
        }

        /**
         * The thing with this word.
         *
         * @throws IllegalArgumentException naming the words that are known
         */
        public static Seen ofWord(String word) {
            return Words.choice(Seen.class, "observation", word);
        }
    }
}
