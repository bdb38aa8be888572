package org.pumpwright.host.app;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.pumpwright.host.grade.StandAtRestChecks;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.run.RunOutcome;
import org.pumpwright.host.run.StandAtRest;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandIdentity;
import org.pumpwright.host.trace.Sample;

/** Whether a stand is fit to test with, found without driving anything. Confined to the run thread. */
public final class StandCheckUp {
    /** How long the stand is watched at rest. */
    public static final double SECONDS = 2;

    private StandCheckUp() {}

    /**
     * What was found.
     *
     * @param identity who answered
     * @param outcome what was recorded at rest
     * @param checks each check
     */
    public record Finding(StandIdentity identity, RunOutcome outcome, List<StandCheck> checks) {
        /** True when the stand could be watched to the end and every check held. */
        public boolean fit() {
            return outcome.ending().completed() && checks.stream().allMatch(StandCheck::ok);
        }
    }

    /**
     * Opens the stand, arms it, and watches it at rest.
     *
     * @param today the day on which calibrations must be in date
     * @throws StandException when it can't be reached or refuses to arm
     */
    public static Finding of(Stand stand, LocalDate today) throws StandException {
        return of(stand, today, new StopButton(), sample -> {});
    }

    /**
     * The same, but it can be stopped, and watched.
     *
     * @param stop may be pressed from any thread; the stand is safe afterwards and the finding says that it was stopped
     * @param heard takes each sample of about {@link #SECONDS}; must return soon
     */
    public static Finding of(Stand stand, LocalDate today, StopButton stop, Consumer<Sample> heard)
            throws StandException {
        StandDescription description = stand.description();
        StandIdentity identity = stand.open();
        RunOutcome outcome = StandAtRest.record(stand, SECONDS, stop, heard);
        StandExpectations expected = new StandExpectations(
                        description.supplyVolts(), description.nozzle().m3PerSecondPerRootPascal())
                .on(today);
        return new Finding(identity, outcome, StandAtRestChecks.of(outcome.trace(), expected));
    }
}
