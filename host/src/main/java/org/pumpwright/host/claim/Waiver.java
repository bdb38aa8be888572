package org.pumpwright.host.claim;

import java.time.OffsetDateTime;

/**
 * A person went past a step that is asked for, and says why. Thread-safe.
 *
 * @param step which
 * @param person who answers for it
 * @param reason why
 * @param at when
 */
public record Waiver(Step step, String person, String reason, OffsetDateTime at) {
    public Waiver {
        person = Words.given("person", person);
        reason = Words.given("reason", reason);
        at = Words.second(at);
    }

    /** What can be gone past. The text's key is {@code claim.waiver.WORD}. */
    public enum Step {
        /** The unit goes on the stand although nobody has confirmed that it was rinsed. */
        DECONTAMINATION,
        /** A symptom that did not show is closed without the plan that provokes what comes and goes. */
        INTERMITTENT_PLAN;

        /** The word in files. */
        public String word() {
            return Words.of(this);
        }

        /** Key of its text. */
        public String key() {
            return "claim.waiver." + word();
        }
    }
}
