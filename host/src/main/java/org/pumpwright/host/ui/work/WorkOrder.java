package org.pumpwright.host.ui.work;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.quantity.UnitSystem;

/**
 * A unit that came in, and what is to be done with it. Thread-safe.
 *
 * @param model what it is
 * @param plan how it is tested
 * @param serial as read from the plate, or {@code no plate}
 * @param technician who tests
 * @param product what it has pumped
 * @param job why it is here
 * @param claim number of the claim; empty without one
 * @param practice the simulated unit, where it is only practice
 */
public record WorkOrder(
        UnitModel model,
        Plan plan,
        String serial,
        String technician,
        Product product,
        Acceptance.Job job,
        Optional<String> claim,
        Optional<PracticeUnit> practice) {
    /** What stands where a serial would. */
    public static final String NO_PLATE = "no plate";

    /** The simulated stand's name. */
    static final String PRACTICE_STAND = "simulated";

    /** A serial as it is said. */
    public static Word serialWord(String serial) {
        return serial.equals(NO_PLATE) ? Word.of("ui.receive.no_plate") : Word.asIs(serial);
    }

    /** The same unit with another plan. */
    public WorkOrder by(Plan other) {
        return new WorkOrder(model, other, serial, technician, product, job, claim, practice);
    }

    /**
     * As the use case takes it.
     *
     * @param stand name of the stand; practice goes to the simulated one whatever it is
     * @param port of the stand
     * @param pace of a simulated stand; empty for as fast as it goes, and for a real one
     */
    Acceptance.Order order(String stand, Optional<String> port, OptionalDouble pace, UnitSystem units) {
        boolean pretended = practice.isPresent();
        Stands.Reach reach = new Stands.Reach(pretended ? Optional.empty() : port, practice, pace, Map.of());
        return new Acceptance.Order(
                        pretended ? PRACTICE_STAND : stand,
                        reach,
                        model.id(),
                        Optional.of(plan.id()),
                        serial,
                        technician,
                        units)
                .within(job);
    }
}
