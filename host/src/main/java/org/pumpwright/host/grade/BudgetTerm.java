package org.pumpwright.host.grade;

/**
 * One part of a feature's uncertainty. The parts add in quadrature. Thread-safe.
 *
 * @param name in plain words
 * @param standardUncertainty in the feature's unit
 * @param through what the same error of other features comes through, e.g. {@code meter K}; empty where it is this feature's
 *     own
 */
public record BudgetTerm(String name, double standardUncertainty, String through) {}
