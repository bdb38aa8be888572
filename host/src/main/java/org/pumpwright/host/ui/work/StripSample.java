package org.pumpwright.host.ui.work;

/**
 * What the strip chart shows of one moment, in SI units; what is not measured is not a number. Thread-safe.
 *
 * @param second the board's time, s
 * @param flow m3/s
 * @param volts at the unit's pins
 * @param amps of the supply
 * @param pascals outlet pressure
 */
public record StripSample(double second, double flow, double volts, double amps, double pascals) {}
