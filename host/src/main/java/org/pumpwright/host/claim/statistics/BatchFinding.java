package org.pumpwright.host.claim.statistics;

/**
 * One batch against the rest of the fleet. Thread-safe.
 *
 * @param batch date code, or the month of shipping
 * @param shipped how many
 * @param failures units with a confirmed failure, at ages the rest has reached too
 * @param expected failures by the rest's failure rate at the same ages
 * @param chance how likely the failures of the whole fleet, dealt out by chance, give this batch so many or more
 * @param alert whether that is below the setting: look for a common cause, nothing more
 */
public record BatchFinding(String batch, int shipped, int failures, double expected, double chance, boolean alert) {}
