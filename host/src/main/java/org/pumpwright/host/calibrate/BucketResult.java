package org.pumpwright.host.calibrate;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.calibration.KPoint;

/**
 * What a bucket test gives. Thread-safe.
 *
 * @param test as carried out
 * @param runs every run worked out, as on the sheet, those left out too
 * @param points the flows of the main pass, the lowest first
 * @param fit of the usual law, whether or not it holds
 * @param curve what K over the flow is taken from: the fit where it holds, else a table
 * @param single the one K for the customer's working flows
 * @param passes the other passes against the main one
 * @param findings what a reader must know
 */
public record BucketResult(
        BucketTest test,
        List<RunResult> runs,
        List<FlowPoint> points,
        FittedK fit,
        KOverFlow curve,
        SingleK single,
        List<PassComparison> passes,
        List<Finding> findings) {
    public BucketResult {
        runs = List.copyOf(runs);
        points = List.copyOf(points);
        passes = List.copyOf(passes);
        findings = List.copyOf(findings);
    }

    /** Whether the runs agree well enough at every flow. */
    public boolean gatePassed() {
        return points.stream().allMatch(point -> point.gate().passed());
    }

    /** The K-factor over the flow as a stand's description takes it: the curve at the calibrated flows. */
    public KCurve kCurve() {
        return new KCurve(points.stream()
                .map(point -> new KPoint(point.flow(), curve.at(point.flow()).k()))
                .toList());
    }

    /** K now over K before, less 1; empty where no K was known. */
    public Optional<Double> changeShare() {
        return test.declared().previous().map(before -> single.k().pulsesPerM3() / before.pulsesPerM3() - 1);
    }
}
