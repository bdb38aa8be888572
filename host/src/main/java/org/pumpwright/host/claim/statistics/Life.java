package org.pumpwright.host.claim.statistics;

/**
 * How long units lasted, or have lasted so far. Thread-safe.
 *
 * @param age time in service, in any unit, above 0
 * @param failed whether they failed then; otherwise they were taken off or still served (a suspension)
 * @param count how many units, 1 or more
 */
public record Life(double age, boolean failed, int count) {
    public Life {
        if (!(age > 0) || Double.isInfinite(age)) {
            throw new IllegalArgumentException("age %s must be above 0 and finite".formatted(age));
        }
        if (count < 1) {
            throw new IllegalArgumentException("count %d must be 1 or more".formatted(count));
        }
    }

    /** Units that failed at this age. */
    public static Life failed(double age, int count) {
        return new Life(age, true, count);
    }

    /** Units last seen unfailed at this age. */
    public static Life suspended(double age, int count) {
        return new Life(age, false, count);
    }
}
