package org.pumpwright.host.grade;

/**
 * One check that the stand and the run were fit to judge a unit. A failed one makes the run invalid; it is never held
 * against the unit. Thread-safe.
 *
 * @param name what was checked, e.g. {@code volts at the pins}
 * @param ok whether it held
 * @param finding what was found, with figures and limit
 * @param remedy what to do when it did not hold; empty when it held
 */
public record StandCheck(String name, boolean ok, String finding, String remedy) {}
