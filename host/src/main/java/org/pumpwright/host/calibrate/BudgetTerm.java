package org.pumpwright.host.calibrate;

import org.pumpwright.host.quantity.Require;

/**
 * One source of uncertainty of K at one flow. Thread-safe.
 *
 * @param effect which
 * @param change of K, as a share, when the source is one standard uncertainty above its estimate; below 0 where K falls
 * @param degreesOfFreedom behind that standard uncertainty, above 0; infinite where it is taken as exactly known
 * @param basis what it was worked out from, for a person
 */
public record BudgetTerm(Effect effect, double change, double degreesOfFreedom, String basis) {
    /**
     * Degrees of freedom of a judged half-width: judged to about 20 %, {@code 1/2 (0.20)^-2 = 12.5}, rounded down (JCGM 100,
     * G.4.2).
     */
    public static final double JUDGED = 12;

    private static final double ROOT_3 = Math.sqrt(3);

    public BudgetTerm {
        Require.inRange("share of " + effect.words(), change, -1, 1, "");
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "%s has %s degrees of freedom, they must be above 0".formatted(effect.words(), degreesOfFreedom));
        }
    }

    /** From half the width of a rectangular distribution (JCGM 100, 4.3.7), seen as a change of K. */
    static BudgetTerm halfWidth(Effect effect, double changeAtHalfWidth, String basis) {
        return new BudgetTerm(effect, changeAtHalfWidth / ROOT_3, freedom(effect), basis);
    }

    /** From a standard uncertainty, seen as a change of K. */
    static BudgetTerm standard(Effect effect, double change, String basis) {
        return new BudgetTerm(effect, change, freedom(effect), basis);
    }

    private static double freedom(Effect effect) {
        return effect.isJudged() ? JUDGED : Double.POSITIVE_INFINITY;
    }

    /** The standard uncertainty, as a share of K. */
    public double standardShare() {
        return Math.abs(change);
    }
}
