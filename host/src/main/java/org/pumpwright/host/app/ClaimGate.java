package org.pumpwright.host.app;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.datafile.DataFileException;

/**
 * Is asked before a unit is tested for a claim, while nothing has moved: whether what was noted at intake is complete, and what
 * the customer said, which picks the plan. Thread-safe.
 */
@FunctionalInterface
public interface ClaimGate {
    /** Lets every unit through: where no claims are kept. */
    ClaimGate NONE = (unit, bypass) -> Answer.FREE;

    /**
     * Whether a unit may be tested for its claim.
     *
     * @param bypass who lets it be tested all the same; empty when nobody does
     * @throws OrderException when it may not, saying what is missing and what to do
     * @throws DataFileException when a data file is wrong
     */
    Answer mayTest(Unit unit, Optional<Waived> bypass) throws OrderException, DataFileException;

    /**
     * What is to be tested.
     *
     * @param claim number of the claim or job
     * @param model id of the unit model
     * @param serial as read from the plate, or {@code no plate}
     */
    record Unit(String claim, String model, String serial) {}

    /**
     * Somebody who lets a unit be tested though something is missing.
     *
     * @param person by name
     * @param reason in that person's words
     */
    record Waived(String person, String reason) {}

    /**
     * A unit that may be tested.
     *
     * @param complaint what the customer said, by which the plan is picked; empty where nothing was noted
     * @param warnings what the person at the stand should read first
     */
    record Answer(Optional<Complaint> complaint, List<String> warnings) {
        /** Nothing is known and nothing is to be said. */
        public static final Answer FREE = new Answer(Optional.empty(), List.of());

        public Answer {
            warnings = List.copyOf(warnings);
        }
    }
}
