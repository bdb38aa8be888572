package org.pumpwright.host.plant.hydraulic;

/**
 * What a head does at one speed against the stand's nozzle. Thread-safe.
 *
 * @param flowM3PerSecond flow through the nozzle, as the meter sees it
 * @param pressurePa pressure in front of the nozzle
 * @param shaftNewtonMetre torque it takes from the shaft
 */
record LoadPoint(double flowM3PerSecond, double pressurePa, double shaftNewtonMetre) {
    static final LoadPoint NONE = new LoadPoint(0, 0, 0);
}
