package org.pumpwright.host.app;

import java.time.LocalDate;
import java.util.List;
import org.pumpwright.host.grade.StandAtRestChecks;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.run.RunOutcome;
import org.pumpwright.host.run.StandAtRest;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandIdentity;

/** Whether a stand is fit to test with, found without driving anything. Confined to the run thread. */
public final class StandCheckUp {
    private static final double SECONDS = 2;

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
        StandDescription description = stand.description();
        StandIdentity identity = stand.open();
        RunOutcome outcome = StandAtRest.record(stand, SECONDS);
        StandExpectations expected = new StandExpectations(
                        description.supplyVolts(), description.nozzle().m3PerSecondPerRootPascal())
                .on(today);
        return new Finding(identity, outcome, StandAtRestChecks.of(outcome.trace(), expected));
    }
}
