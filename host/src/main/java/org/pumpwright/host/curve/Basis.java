package org.pumpwright.host.curve;

import java.time.LocalDate;
import java.util.List;
import org.pumpwright.host.quantity.Require;

/**
 * What a curve was built from. Thread-safe.
 *
 * @param plan id and version of the plan by which the units were run
 * @param runs number of runs of all units
 * @param firstRun day of the first run
 * @param lastRun day of the last run
 * @param knownGoodBy the person who declared the units to be good
 * @param jointFeatures number of features that the curve's tolerance factor holds together
 * @param runIds ids of the records of those runs; empty in curves from before they were kept
 */
public record Basis(
        String plan,
        int runs,
        LocalDate firstRun,
        LocalDate lastRun,
        String knownGoodBy,
        int jointFeatures,
        List<String> runIds) {
    public Basis {
        runIds = List.copyOf(runIds);
        Require.inRange("number of runs", runs, 1, 100_000, "");
        Require.inRange("number of features", jointFeatures, 1, 1000, "");
        if (lastRun.isBefore(firstRun)) {
            throw new IllegalArgumentException(
                    "the last run, %s, lies before the first, %s".formatted(lastRun, firstRun));
        }
    }
}
