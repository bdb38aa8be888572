package org.pumpwright.host.grade.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Ramp;
import org.pumpwright.host.plan.Step;
import org.pumpwright.host.plan.Sweep;

/** Everything that the steps of a run have read, in the order of the plan. Thread-safe. */
public final class Findings {
    private Findings() {}

    /** The findings of every step that was begun; a reading that its data can't bear becomes a word. */
    public static List<Finding> of(FindingInput input) {
        List<Finding> findings = new ArrayList<>();
        for (Step step : input.plan().steps()) {
            findings.addAll(guarded(step.name(), () -> of(input, step)));
        }
        findings.addAll(guarded("standstill", () -> WindingFindings.of(input)));
        findings.addAll(guarded("loads", () -> LoadFindings.resistances(input)));
        findings.addAll(guarded(DriverFindings.STEP, () -> DriverFindings.of(input)));
        findings.addAll(guarded(MeterKFindings.STEP, () -> QuietMeter.of(input)));
        findings.addAll(guarded(ValveFindings.STEP, () -> ValveFindings.of(input)));
        findings.addAll(guarded(HarnessFindings.STEP, () -> HarnessFindings.of(input)));
        return findings;
    }

    private static List<Finding> of(FindingInput input, Step step) {
        if (step instanceof Sweep sweep) {
            return switch (input.plan().kind()) {
                case PUMP_12V, HYDRAULIC_PUMP -> SweepFindings.of(input, sweep);
                case METER -> MeterFindings.of(input, sweep);
                case DRIVER, HARNESS -> LoadFindings.of(input, sweep);
            };
        }
        if (step instanceof Ramp ramp) {
            return RampFindings.of(input, ramp);
        }
        if (step instanceof Hold hold) {
            return of(input, hold);
        }
        return List.of();
    }

    private static List<Finding> of(FindingInput input, Hold hold) {
        return switch (hold.reads()) {
            case NOTHING -> List.of();
            case SOAK -> SoakFindings.of(input, hold);
            case STARTS -> StartsFindings.of(input, hold);
            case STANDSTILL -> StandstillFindings.of(input, hold);
            case ZERO_FLOW -> NoFlowFindings.zeroFlow(input, hold);
            case DEAD_HEAD -> DeadHeadFindings.of(input, hold);
            case PRIME -> PrimeFinding.of(input, hold);
            case ZERO_COMMAND -> NoFlowFindings.zeroCommand(input, hold);
            case LOAD -> LoadFindings.of(input, hold);
        };
    }

    /** The run cannot be had again: one reading that can't be taken must not cost the others. */
    private static List<Finding> guarded(String step, Supplier<List<Finding>> reading) {
        try {
            return reading.get();
        } catch (IllegalArgumentException e) {
            return List.of(Finding.word(step, "reading", "not measured", String.valueOf(e.getMessage())));
        }
    }
}
