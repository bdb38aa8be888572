package org.pumpwright.host.ui.work;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.StandCheckUp;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.conform.CheckResult;
import org.pumpwright.host.stand.conform.Conformance;
import org.pumpwright.host.stand.conform.Outcome;
import org.pumpwright.host.stand.conform.Provoker;
import org.pumpwright.host.stand.conform.TrialStop;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Sample;

/** Self-check and trial of a board, each of which can be stopped. Thread-safe. */
final class StandCare {
    private final Stands stands;

    StandCare(Stands stands) {
        this.stands = stands;
    }

    /** Takes the first sample of a check and the newest. Called on the worker thread. */
    interface Hearer {
        void heard(StandDescription stand, Sample first, Sample now);
    }

    /**
     * How a trial ended.
     *
     * @param finding empty when it was stopped
     * @param safe whether the board said that it is safe, where it was stopped
     */
    record Tried(Optional<Conformance.Finding> finding, boolean safe) {}

    StandCheckUp.Finding check(
            StandDescription description, Stands.Reach reach, LocalDate today, StopButton stop, Hearer hearer)
            throws OrderException, StandException {
        AtomicReference<@Nullable Sample> first = new AtomicReference<>();
        try (Stand stand = stands.reach(description, reach, UnitKind.PUMP_12V).stand()) {
            return StandCheckUp.of(stand, today, stop, now -> {
                first.compareAndSet(null, now);
                Sample begin = first.get();
                hearer.heard(description, begin == null ? now : begin, now);
            });
        }
    }

    static boolean wasStopped(StandCheckUp.Finding finding) {
        return finding.outcome().ending().kind() == Ending.Kind.STOPPED_BY_PERSON;
    }

    Tried trial(StandDescription description, Stands.Reach reach, TrialStop stop, Consumer<CheckResult> told)
            throws OrderException, StandException {
        try {
            return new Tried(Optional.of(stands.conformance(description, reach, Provoker.NONE, told, stop)), true);
        } catch (StandException e) {
            if (stop.pressed().isEmpty()) {
                throw e;
            }
            return new Tried(Optional.empty(), stop.safe());
        }
    }

    /** A simulated board need not take its time for a trial. */
    static Stands.Reach atOnce(Stands.Reach reach) {
        return new Stands.Reach(reach.port(), Optional.empty(), OptionalDouble.empty(), Map.of());
    }

    /** What is broken first, then what was not possible, then what held; each in the order of the script. */
    static List<CheckResult> worstFirst(Conformance.Finding finding) {
        return finding.checks().stream()
                .sorted(Comparator.comparingInt(result -> urgency(result.outcome())))
                .toList();
    }

    private static int urgency(Outcome outcome) {
        return switch (outcome) {
            case BROKEN -> 0;
            case NOT_POSSIBLE -> 1;
            case HELD -> 2;
        };
    }
}
