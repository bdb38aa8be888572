package org.pumpwright.host.rule;

import org.pumpwright.host.quantity.Require;

/**
 * The numbers of the decision. Thread-safe.
 *
 * @param guardFactor the guard over the standard uncertainty
 * @param mostRetests how often a run in doubt is repeated before a person decides
 * @param guardSource where the guard stands
 * @param retestsSource where the number of retests stands
 */
public record DecisionNumbers(double guardFactor, int mostRetests, Source guardSource, Source retestsSource) {
    /** At most 5 % one-sided risk at a limit, and two retests. */
    public static final DecisionNumbers STANDARD = new DecisionNumbers(1.645, 2, Source.PROGRAM, Source.PROGRAM);

    public DecisionNumbers {
        Require.inRange("guard factor", guardFactor, 0, 10, "");
        Require.inRange("retests", mostRetests, 0, 10, "");
    }
}
