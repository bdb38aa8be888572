package org.pumpwright.host.claim;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * What the parts desk decides. It is kept apart from the finding and signed by somebody else. Thread-safe.
 *
 * @param outcome what was decided
 * @param reason why, in the signer's words
 * @param signer who signs
 * @param second who signs too, where the value asks for it
 * @param rules label of the coverage rules that were looked at; empty when there were none
 * @param amount what is given, where it was told
 * @param at when
 */
public record CoverageDecision(
        Outcome outcome,
        String reason,
        String signer,
        Optional<String> second,
        Optional<String> rules,
        Optional<Amount> amount,
        OffsetDateTime at) {
    public CoverageDecision {
        reason = Words.given("reason", reason);
        signer = Words.given("signer", signer);
        second = second.map(name -> Words.given("second signer", name));
        at = Words.second(at);
    }

    /** What can be decided. The text's key is {@code claim.decision.WORD}. */
    public enum Outcome {
        APPROVE,
        DENY,
        /** Given without being owed. */
        GOODWILL,
        /** Handed on to somebody else to decide, such as the factory. */
        REFER;

        /** The word in files and on the command line. */
        public String word() {
            return Words.of(this);
        }

        /** Key of its text. */
        public String key() {
            return "claim.decision." + word();
        }

        /**
         * The outcome with this word.
         *
         * @throws IllegalArgumentException naming the words that are known
         */
        public static Outcome ofWord(String word) {
            return Words.choice(Outcome.class, "decision", word);
        }
    }
}
