package org.pumpwright.host.grade;

import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.catalog.Nominal;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.finding.FindingInput;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.rule.GradingRules;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Trace;

/**
 * Everything a grade depends on. The same input always gives the same grade. Thread-safe.
 *
 * @param trace what was measured
 * @param ending how the run ended
 * @param plan what was to be measured, and which points are judged
 * @param curve what a healthy unit does; empty where there is no curve
 * @param conditions model, driver, nozzle and fluid of the run
 * @param stand what a stand in order shows
 * @param units the units of the words in the grade; its figures are SI all the same
 * @param rules what else the shop judges by; empty where it has no rules for this kind of unit
 * @param intake what was known of the unit when its run began
 * @param nominal what the unit's model says that it should do
 */
public record GradingInput(
        Trace trace,
        Ending ending,
        Plan plan,
        Optional<HealthyCurve> curve,
        Conditions conditions,
        StandExpectations stand,
        UnitSystem units,
        Optional<GradingRules> rules,
        Intake intake,
        Nominal nominal) {

    /** A first run without a complaint, judged by a curve alone. */
    public GradingInput(
            Trace trace,
            Ending ending,
            Plan plan,
            Optional<HealthyCurve> curve,
            Conditions conditions,
            StandExpectations stand,
            UnitSystem units) {
        this(trace, ending, plan, curve, conditions, stand, units, Optional.empty(), Intake.NONE, Nominal.UNKNOWN);
    }

    /** The same judged by these rules too. */
    public GradingInput by(GradingRules others) {
        return new GradingInput(
                trace, ending, plan, curve, conditions, stand, units, Optional.of(others), intake, nominal);
    }

    /** The same with what was known of the unit. */
    public GradingInput knowing(Intake known) {
        return new GradingInput(trace, ending, plan, curve, conditions, stand, units, rules, known, nominal);
    }

    /** The same of a model that says this of what it should do. */
    public GradingInput of(Nominal known) {
        return new GradingInput(trace, ending, plan, curve, conditions, stand, units, rules, intake, known);
    }

    /** The rules given, or the program's own. */
    GradingRules rulesOrStandard() {
        return rules.orElseGet(() -> GradingRules.standard(plan.kind()));
    }

    /** What the findings of the steps depend on. */
    FindingInput forFindings() {
        OptionalDouble freewheel =
                curve.stream().mapToDouble(HealthyCurve::freewheelVolts).findFirst();
        return new FindingInput(trace, plan, conditions.pwmHz(), freewheel, units, nominal);
    }
}
