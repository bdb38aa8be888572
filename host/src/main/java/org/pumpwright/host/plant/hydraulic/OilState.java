package org.pumpwright.host.plant.hydraulic;

/**
 * Oil side and head in balance. Thread-safe.
 *
 * @param speedRadPerSecond shaft speed
 * @param oilM3PerSecond oil that the valve passes to the motor and its relief valve
 * @param motorDropPa pressure drop over the motor
 * @param supplyPa pressure of the oil supply
 * @param load what the head does
 */
record OilState(double speedRadPerSecond, double oilM3PerSecond, double motorDropPa, double supplyPa, LoadPoint load) {}
