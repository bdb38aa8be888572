package org.pumpwright.host.run;

import java.util.Optional;
import org.pumpwright.host.plan.Ask;

/**
 * The person at the stand, as a run sees him. The run never waits inside a call: it puts a question, goes on keeping the
 * stand's link alive, and looks now and then for the answer. Thread-safe.
 */
public interface Operator {
    /** Nobody is there: a question ends the run. */
    Operator NOBODY = new Operator() {
        @Override
        public boolean isThere() {
            return false;
        }

        @Override
        public void ask(Ask question) {}

        @Override
        public Optional<String> answer() {
            return Optional.empty();
        }

        @Override
        public boolean wantsPause() {
            return false;
        }
    };

    /** False where nobody could ever answer. */
    boolean isThere();

    /** Puts a question. It takes the place of an older one. */
    void ask(Ask question);

    /** The answer to the question that was put last, once; empty while there is none. */
    Optional<String> answer();

    /** Whether the run is to pause between two points. */
    boolean wantsPause();
}
