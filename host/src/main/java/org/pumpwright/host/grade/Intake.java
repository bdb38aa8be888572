package org.pumpwright.host.grade;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.Require;

/**
 * What was known of a unit when its run began. Thread-safe.
 *
 * @param complaint what the customer says, as a code word such as {@code wont-start}
 * @param safetyObservations what a person saw that ends the matter, e.g. oil in the product or an external leak
 * @param notTestable why the unit cannot be tested as it came; empty when it can
 * @param attempt which run of this unit for this matter this is, from 1
 * @param earlierRuns ids of the runs before it, oldest first
 * @param decision who let it be run once more than is allowed without a decision; empty when nobody had to
 * @param claim number of the claim or job that the unit is here for; empty when none was given
 * @param handling what it has pumped, and whether it is clean
 */
public record Intake(
        Optional<String> complaint,
        List<String> safetyObservations,
        Optional<String> notTestable,
        int attempt,
        List<String> earlierRuns,
        Optional<Decision> decision,
        Optional<String> claim,
        Handling handling) {
    /** Nothing is known; the first run. */
    public static final Intake NONE =
            new Intake(Optional.empty(), List.of(), Optional.empty(), 1, List.of(), Optional.empty());

    public Intake {
        safetyObservations = List.copyOf(safetyObservations);
        earlierRuns = List.copyOf(earlierRuns);
        Require.inRange("attempt", attempt, 1, 1000, "");
    }

    /** What was known before claims were kept. */
    public Intake(
            Optional<String> complaint,
            List<String> safetyObservations,
            Optional<String> notTestable,
            int attempt,
            List<String> earlierRuns,
            Optional<Decision> decision) {
        this(
                complaint,
                safetyObservations,
                notTestable,
                attempt,
                earlierRuns,
                decision,
                Optional.empty(),
                Handling.UNKNOWN);
    }

    /** The same for a claim. */
    public Intake claiming(String number) {
        return new Intake(
                complaint,
                safetyObservations,
                notTestable,
                attempt,
                earlierRuns,
                decision,
                Optional.of(number),
                handling);
    }

    /** The same with what the customer says. */
    public Intake complaining(String word) {
        return new Intake(
                Optional.of(word), safetyObservations, notTestable, attempt, earlierRuns, decision, claim, handling);
    }

    /** The same after these runs. */
    public Intake after(List<String> runs) {
        return new Intake(complaint, safetyObservations, notTestable, runs.size() + 1, runs, decision, claim, handling);
    }

    /** The same with something seen that ends the matter. */
    public Intake observing(List<String> observations) {
        return new Intake(complaint, observations, notTestable, attempt, earlierRuns, decision, claim, handling);
    }

    /** The same for a unit that cannot be tested. */
    public Intake untestable(String why) {
        return new Intake(
                complaint, safetyObservations, Optional.of(why), attempt, earlierRuns, decision, claim, handling);
    }

    /** The same, run once more because a person decided it. */
    public Intake decided(Decision person) {
        return new Intake(
                complaint, safetyObservations, notTestable, attempt, earlierRuns, Optional.of(person), claim, handling);
    }

    /** The same with what is known of how to handle it. */
    public Intake handled(Handling known) {
        return new Intake(complaint, safetyObservations, notTestable, attempt, earlierRuns, decision, claim, known);
    }
}
