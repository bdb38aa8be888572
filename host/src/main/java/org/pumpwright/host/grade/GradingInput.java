package org.pumpwright.host.grade;

import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.finding.FindingInput;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Trace;

/**
 * Everything a grade depends on. The same input always gives the same grade. Thread-safe.
 *
 * @param trace what was measured
 * @param ending how the run ended
 * @param plan what was to be measured, and which points are judged
 * @param curve what a healthy unit does; empty where there is no curve, and then nothing is judged
 * @param conditions model, driver, nozzle and fluid of the run
 * @param stand what a stand in order shows
 * @param units the units of the words in the grade; its figures are SI all the same
 */
public record GradingInput(
        Trace trace,
        Ending ending,
        Plan plan,
        Optional<HealthyCurve> curve,
        Conditions conditions,
        StandExpectations stand,
        UnitSystem units) {

    /** What the findings of the steps depend on. */
    FindingInput forFindings() {
        OptionalDouble freewheel =
                curve.stream().mapToDouble(HealthyCurve::freewheelVolts).findFirst();
        return new FindingInput(trace, plan, conditions.pwmHz(), freewheel, units);
    }
}
