package org.pumpwright.host.claim.statistics;

import org.pumpwright.host.quantity.CoverageFactor;

/**
 * So many of so many, with the 95 % score interval of E. B. Wilson (Journal of the American Statistical Association 22 (1927) 209): all
 * true shares from which what was seen is no further than 1.96 of their own standard deviations. It never leaves 0 to 1 and stands
 * for nought and for all as well. Thread-safe.
 *
 * @param hits how many are so
 * @param of how many there are, 1 or more
 */
public record Share(int hits, int of) {
    private static final double Z = CoverageFactor.of(Interval.LEVEL, Double.POSITIVE_INFINITY);

    public Share {
        if (of < 1) {
            throw new IllegalArgumentException("share of %d: there must be 1 or more to take a share of".formatted(of));
        }
        if (hits < 0 || hits > of) {
            throw new IllegalArgumentException("%d of %d: must lie between 0 and %d".formatted(hits, of, of));
        }
    }

    /** The share as counted, 0 to 1. */
    public double value() {
        return (double) hits / of;
    }

    /** Between which the true share lies, at 95 %. */
    public Interval interval() {
        double p = value();
        double shrink = 1 + Z * Z / of;
        double middle = (p + Z * Z / (2.0 * of)) / shrink;
        double half = Z * Math.sqrt(p * (1 - p) / of + Z * Z / (4.0 * of * of)) / shrink;
        return new Interval(hits == 0 ? 0 : middle - half, hits == of ? 1 : middle + half);
    }
}
