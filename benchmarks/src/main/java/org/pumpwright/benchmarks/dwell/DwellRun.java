package org.pumpwright.benchmarks.dwell;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.Grader;
import org.pumpwright.host.grade.GradingInput;
import org.pumpwright.host.grade.PointReading;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpSteadyState;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.PlanRun;
import org.pumpwright.host.run.RunOutcome;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.host.trace.Journal;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.Sample;

/**
 * What one plan makes of one unit on the simulated stand. Thread-safe.
 *
 * @param unit which
 * @param completed whether every point was visited
 * @param benchSeconds from the first sample to the last
 * @param verdict on it
 * @param flows at the judged points
 */
record DwellRun(UnitMix.Unit unit, boolean completed, double benchSeconds, Verdict verdict, List<Flow> flows) {
    /**
     * The flow at one judged point; uncertainties are standard ones, everything is a share of the flow.
     *
     * @param percent set point
     * @param scatter uncertainty from the pulses alone
     * @param total uncertainty with the meter's calibration
     * @param off how far it is from what the same meter would show at the unit's steady state
     */
    record Flow(int percent, double scatter, double total, double off) {}

    /** Carries the plan out and reads it. Sensors have noise and no calibration error, so that nothing else hides a bias. */
    static DwellRun of(UnitMix.Unit unit, Plan plan, StandDescription description, HealthyCurve curve) {
        RunOutcome outcome = run(unit, plan, description);
        List<Sample> samples = outcome.trace().samples();
        double seconds =
                samples.get(samples.size() - 1).boardSeconds() - samples.get(0).boardSeconds();
        List<Flow> flows = PointReading.all(outcome.trace()).stream()
                .filter(point -> point.mark().leg() == Leg.UP
                        && plan.judged().contains(point.mark().commanded())
                        && point.flow().value() > 0)
                .map(point -> flow(unit, point, outcome))
                .toList();
        return new DwellRun(
                unit, outcome.ending().completed(), seconds, verdict(outcome, plan, description, curve), flows);
    }

    private static RunOutcome run(UnitMix.Unit unit, Plan plan, StandDescription description) {
        PumpPlant plant = new PumpPlant(unit.parameters(), SensorErrors.noiseOnly(), unit.number());
        SimulatedLine line = new SimulatedLine(new SimulatedBoard(plant, description.channels()), 0);
        try (WireStand stand = new WireStand(description, () -> line, WireTiming.STANDARD)) {
            stand.open();
            return new PlanRun(stand, plan, event -> {}, new StopButton(), Operator.NOBODY, Journal.NONE).carryOut();
        } catch (StandException e) {
            throw new IllegalStateException("the simulated stand failed", e);
        }
    }

    private static Flow flow(UnitMix.Unit unit, PointReading point, RunOutcome outcome) {
        double calibration = outcome.trace().channels().flowMeter().relativeUncertainty();
        double total = point.flow().standardUncertainty() / point.flow().value();
        double steady = PumpSteadyState.of(
                        unit.parameters(), point.mark().commanded().fraction())
                .flowM3PerSecond();
        double shown = outcome.trace()
                .channels()
                .flowMeter()
                .flow(unit.parameters().meter().pulsesPerSecond(steady))
                .m3PerSecond();
        return new Flow(
                (int) Math.round(point.mark().commanded().percent()),
                Math.sqrt(Math.max(0, total * total - calibration * calibration)),
                total,
                point.flow().value() / shown - 1);
    }

    private static Verdict verdict(RunOutcome outcome, Plan plan, StandDescription description, HealthyCurve curve) {
        return Grader.grade(new GradingInput(
                        outcome.trace(),
                        outcome.ending(),
                        plan,
                        Optional.of(curve),
                        curve.conditions(),
                        new StandExpectations(
                                description.supplyVolts(), description.nozzle().m3PerSecondPerRootPascal()),
                        UnitSystem.US))
                .verdict();
    }
}
