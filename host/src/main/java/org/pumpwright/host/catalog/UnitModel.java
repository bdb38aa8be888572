package org.pumpwright.host.catalog;

import org.pumpwright.host.quantity.Require;

/**
 * A model of unit. Thread-safe.
 *
 * @param id short name, as given on the command line
 * @param title for people
 * @param kind what it is
 * @param plan id of the plan it is tested with
 * @param invented true for models that exist only for practice and demonstration
 * @param ampsLimit the current that the model may draw for more than a moment, A
 * @param rules name of the rules by which it is judged
 * @param nominal what it should do
 */
public record UnitModel(
        String id,
        String title,
        UnitKind kind,
        String plan,
        boolean invented,
        double ampsLimit,
        String rules,
        Nominal nominal) {
    /** A model that is judged by the rules of its kind. */
    public UnitModel(String id, String title, UnitKind kind, String plan, boolean invented, double ampsLimit) {
        this(id, title, kind, plan, invented, ampsLimit, kind.word(), Nominal.UNKNOWN);
    }

    public UnitModel {
        Require.inRange("current limit", ampsLimit, 0.1, 100, "A");
    }
}
