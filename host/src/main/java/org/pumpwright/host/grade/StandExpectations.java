package org.pumpwright.host.grade;

import java.time.LocalDate;
import java.util.Optional;
import org.pumpwright.host.quantity.Require;

/**
 * What a stand in order shows, for the checks of the stand. Thread-safe.
 *
 * @param supplyVolts open-circuit voltage of the supply, V
 * @param nozzleM3PerSecondPerRootPascal flow of the nozzle over the root of the pressure before it
 * @param day the day of the run, on which calibrations must be in date; empty when that is not asked
 */
public record StandExpectations(double supplyVolts, double nozzleM3PerSecondPerRootPascal, Optional<LocalDate> day) {
    /** Without a day: calibrations are not asked to be in date. */
    public StandExpectations(double supplyVolts, double nozzleM3PerSecondPerRootPascal) {
        this(supplyVolts, nozzleM3PerSecondPerRootPascal, Optional.empty());
    }

    public StandExpectations {
        Require.inRange("supply", supplyVolts, 1, 60, "V");
        Require.inRange("nozzle", nozzleM3PerSecondPerRootPascal, Double.MIN_NORMAL, 1, "m3/s per root Pa");
    }

    /** The same, with calibrations asked to be in date on this day. */
    public StandExpectations on(LocalDate day) {
        return new StandExpectations(supplyVolts, nozzleM3PerSecondPerRootPascal, Optional.of(day));
    }
}
