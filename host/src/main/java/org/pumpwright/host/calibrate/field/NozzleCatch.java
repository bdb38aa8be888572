package org.pumpwright.host.calibrate.field;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Volume;

/**
 * What was caught at each row or nozzle over the same time. Thread-safe.
 *
 * @param rows in their order, two or more, each 0 or more; their mean above 0
 */
public record NozzleCatch(List<Volume> rows) {
    /** Rows further than this from the mean want cleaning or replacing: University of Georgia Extension; Montana MT 2000-14. */
    public static final double USUAL_LIMIT_SHARE = 0.05;

    /** One row against the mean of all. */
    public record Row(int number, Volume caught, double offShare) {}

    public NozzleCatch {
        rows = List.copyOf(rows);
        Require.inRange("number of rows", rows.size(), 2, 1000, "");
        for (Volume row : rows) {
            Require.inRange("volume caught at a row", row.m3(), 0, 1e3, "m3");
        }
        if (rows.stream().allMatch(row -> row.m3() == 0)) {
            throw new IllegalArgumentException("nothing was caught at any row");
        }
    }

    public Volume mean() {
        double sum = 0;
        for (Volume row : rows) {
            sum += row.m3();
        }
        return new Volume(sum / rows.size());
    }

    /** Standard deviation, with n - 1, over mean. */
    public double coefficientOfVariation() {
        double mean = mean().m3();
        double squares = 0;
        for (Volume row : rows) {
            squares += (row.m3() - mean) * (row.m3() - mean);
        }
        return Math.sqrt(squares / (rows.size() - 1)) / mean;
    }

    /** Every row, numbered from 1. */
    public List<Row> all() {
        double mean = mean().m3();
        List<Row> all = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            all.add(new Row(i + 1, rows.get(i), rows.get(i).m3() / mean - 1));
        }
        return all;
    }

    /**
     * The rows that are off by more than a share of the mean.
     *
     * @param limitShare above 0
     */
    public List<Row> off(double limitShare) {
        Require.inRange("limit of a row", limitShare, 1e-6, 10, "");
        return all().stream()
                .filter(row -> Math.abs(row.offShare()) > limitShare)
                .toList();
    }
}
