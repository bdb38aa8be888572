package org.pumpwright.host.plan;

/**
 * When a point counts as settled: not before the least time, then as soon as the flow's trend over the window is small; at
 * the latest when the time runs out, and then the point is marked. Thread-safe.
 *
 * @param leastSeconds shortest wait
 * @param giveUpSeconds longest wait
 * @param flowChangeShare largest change of flow over the window, as a share of the flow
 */
public record Settle(double leastSeconds, double giveUpSeconds, double flowChangeShare) {}
