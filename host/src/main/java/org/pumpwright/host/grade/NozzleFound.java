package org.pumpwright.host.grade;

import java.util.List;
import java.util.Optional;

/**
 * How the nozzle that a run shows differs from the stand's. Flow over the root of the pressure is the nozzle's, whatever
 * the unit does; where no pressure is sure, nothing is known. Thread-safe.
 *
 * @param share found over wanted, less 1; 0 where it was not measured
 * @param measured whether it was
 */
record NozzleFound(double share, boolean measured) {
    static NozzleFound of(List<PointReading> points, StandExpectations stand) {
        Optional<PointReading> top = WaterChecks.highestPressure(points).filter(WaterChecks::measuresNozzle);
        return top.map(point -> new NozzleFound(
                        point.flow().value()
                                        / Math.sqrt(
                                                point.pressure().orElseThrow().value())
                                        / stand.nozzleM3PerSecondPerRootPascal()
                                - 1,
                        true))
                .orElse(new NozzleFound(0, false));
    }
}
