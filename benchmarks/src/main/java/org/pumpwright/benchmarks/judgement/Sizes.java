package org.pumpwright.benchmarks.judgement;

/**
 * How many of each. Thread-safe.
 *
 * @param healthy healthy units
 * @param worlds curves
 * @param borderline units at each distance from the limit
 * @param beyond units at each distance of 2 u and beyond
 * @param faulty units of each fault and severity
 * @param returns units of a mix as it comes through the door
 * @param fullModerate units of each moderate fault in the full plan
 * @param fullOther units of each other severity in the full plan
 */
record Sizes(
        int healthy, int worlds, int borderline, int beyond, int faulty, int returns, int fullModerate, int fullOther) {
    static Sizes of(int healthy) {
        return new Sizes(
                healthy,
                Math.max(2, Math.min(8, healthy / 30)),
                Math.max(10, healthy * 3 / 20),
                Math.max(10, healthy * 2 / 5),
                Math.max(6, healthy / 33),
                Math.max(20, healthy / 2),
                Math.max(4, healthy / 66),
                Math.max(2, healthy / 330));
    }
}
