package org.pumpwright.host.claim;

import java.util.Optional;

/** What somebody at the desk did; each becomes one entry. Thread-safe. */
public sealed interface Act {
    /** A unit came in, or what was written down when it came is corrected. */
    record Received(ClaimIntake intake) implements Act {}

    /** It went from one place or state to the next. */
    record Moved(CustodyMove move) implements Act {}

    /** A picture was added. */
    record Pictured(Photo photo) implements Act {}

    /** Something was seen or noted. */
    record Observed(Observation observation) implements Act {}

    /** Somebody of the shop has rinsed the unit, or made sure that it is clean. */
    record Rinsed(String person, int rinses) implements Act {
        public Rinsed {
            person = Words.given("who confirms", person);
        }
    }

    /** A step was gone past. */
    record Waived(Waiver waiver) implements Act {}

    /** A technician signs a finding. */
    record Found(Finding finding) implements Act {}

    /** The desk decides. */
    record Decided(CoverageDecision decision) implements Act {}

    /** By what a person may remember it. */
    default String remembered() {
        if (this instanceof Received received) {
            return received.intake().complaint().words() + " "
                    + received.intake().unit().tag();
        }
        if (this instanceof Observed observed) {
            return observed.observation().words();
        }
        return "";
    }

    /** The word of a verdict or decision it holds; empty for other acts. */
    default Optional<String> verdict() {
        if (this instanceof Found found) {
            return Optional.of(Words.of(found.finding().category()));
        }
        if (this instanceof Decided decided) {
            return Optional.of(decided.decision().outcome().word());
        }
        return Optional.empty();
    }
}
