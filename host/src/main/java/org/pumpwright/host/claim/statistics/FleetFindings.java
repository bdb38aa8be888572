package org.pumpwright.host.claim.statistics;

import java.util.List;

/**
 * What shipped against returned teaches. Thread-safe.
 *
 * @param shipped units shipped up to the last day watched
 * @param failed of these with a confirmed failure
 * @param unplaced returns that belong to no line of the table, with the reason
 * @param rows the months-in-service table
 * @param modes life of each failure mode
 * @param batches batches against the rest
 */
public record FleetFindings(
        int shipped,
        int failed,
        List<String> unplaced,
        List<ServiceRow> rows,
        List<ModeLife> modes,
        BatchWatch batches) {
    public FleetFindings {
        unplaced = List.copyOf(unplaced);
        rows = List.copyOf(rows);
        modes = List.copyOf(modes);
    }

    /**
     * Works a fleet out.
     *
     * @param alertBelow chance below which a batch is an alert
     */
    public static FleetFindings of(Fleet fleet, double alertBelow) {
        return new FleetFindings(
                fleet.shipped(),
                fleet.failed(),
                fleet.unplaced(),
                ServiceRow.of(fleet),
                ModeLife.of(fleet),
                BatchWatch.of(fleet, alertBelow));
    }
}
