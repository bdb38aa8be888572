package org.pumpwright.host.stand.conform;

/**
 * What came out of one check. Thread-safe.
 *
 * @param name what a conforming board does
 * @param section of the specification
 * @param outcome whether this board did
 * @param evidence what was seen, or what was missing to see it
 */
public record CheckResult(String name, String section, Outcome outcome, String evidence) {}
