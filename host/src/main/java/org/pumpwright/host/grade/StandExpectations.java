package org.pumpwright.host.grade;

import org.pumpwright.host.quantity.Require;

/**
 * What a stand in order shows, for the checks of the stand. Thread-safe.
 *
 * @param supplyVolts open-circuit voltage of the supply, V
 * @param nozzleM3PerSecondPerRootPascal flow of the nozzle over the root of the pressure before it
 */
public record StandExpectations(double supplyVolts, double nozzleM3PerSecondPerRootPascal) {
    public StandExpectations {
        Require.inRange("supply", supplyVolts, 1, 60, "V");
        Require.inRange("nozzle", nozzleM3PerSecondPerRootPascal, Double.MIN_NORMAL, 1, "m3/s per root Pa");
    }
}
