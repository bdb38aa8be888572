package org.pumpwright.host.grade.cause;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.finding.Finding;

/**
 * Everything that the causes of one run depend on. Thread-safe.
 *
 * @param kind of the unit
 * @param points the driven points of the sweep, in its order; may be empty
 * @param curve what a healthy unit does, where there is a curve
 * @param findings what the steps of the plan have read
 * @param restVolts volts of the supply while nothing was driven, where that was measured
 * @param supplyVolts what the supply should have then, V
 * @param nozzleM3PerSecondPerRootPascal what the stand's nozzle should pass
 */
public record CauseInput(
        UnitKind kind,
        List<SweptPoint> points,
        Optional<HealthyCurve> curve,
        List<Finding> findings,
        OptionalDouble restVolts,
        double supplyVolts,
        double nozzleM3PerSecondPerRootPascal) {
    public CauseInput {
        points = List.copyOf(points);
        findings = List.copyOf(findings);
    }
}
