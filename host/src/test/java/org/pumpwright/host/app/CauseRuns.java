package org.pumpwright.host.app;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.curve.CurveBuilder;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.KnownGoodUnit;
import org.pumpwright.host.grade.PointReading;
import org.pumpwright.host.grade.SweptPoints;
import org.pumpwright.host.grade.cause.CauseInput;
import org.pumpwright.host.grade.cause.SweptPoint;
import org.pumpwright.host.grade.finding.FindingInput;
import org.pumpwright.host.grade.finding.Findings;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.run.PlanRun;
import org.pumpwright.host.run.RunOutcome;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Journal;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;

/** Takes simulated units through a plan of the shop on the simulated stand and tells what their causes depend on. */
final class CauseRuns {
    private final StandDescription stand;
    private final Plan plan;
    private final Optional<HealthyCurve> curve;
    private final Map<Double, Double> usualVolts;

    private CauseRuns(StandDescription stand, Plan plan, Optional<HealthyCurve> curve, Map<Double, Double> usualVolts) {
        this.stand = stand;
        this.plan = plan;
        this.curve = curve;
        this.usualVolts = usualVolts;
    }

    /** Without a healthy curve. */
    static CauseRuns of(StandDescription stand, Plan plan) {
        return new CauseRuns(stand, plan, Optional.empty(), Map.of());
    }

    /** With a curve from units that went through the same plan. */
    CauseRuns withCurveOf(List<Plant> healthy) throws StandException {
        List<KnownGoodUnit> known = new ArrayList<>();
        Map<Double, Double> volts = new HashMap<>();
        for (Plant plant : healthy) {
            List<SweptPoint> points = points(run(plant));
            points.stream()
                    .filter(point -> point.leg() == Leg.UP)
                    .forEach(point ->
                            volts.merge(point.percent(), point.voltsAtPins().value() / healthy.size(), Double::sum));
            known.add(new KnownGoodUnit(points.stream()
                    .filter(point -> point.leg() == Leg.UP && point.flow().value() > 0)
                    .map(point -> new KnownGoodUnit.Point(
                            volts(point),
                            point.flow().value(),
                            point.supplyAmps().value() / point.duty()))
                    .toList()));
        }
        HealthyCurve made = new HealthyCurve(
                "simulated",
                1,
                "Simulated units",
                new Conditions(
                        "demo-pump",
                        stand.driver(),
                        SimulatedBoard.PWM_HZ,
                        stand.nozzle().id(),
                        stand.fluid()),
                true,
                known.size(),
                3,
                "",
                DemoCurve.FREEWHEEL_VOLTS,
                CurveBuilder.points(known, CurveBuilder.grid(known, 12)),
                "tests",
                "2026-01-01");
        return new CauseRuns(stand, plan, Optional.of(made), volts);
    }

    /** The same input as a stand would give that does not measure the volts at the pins and takes the usual ones. */
    CauseInput withUsualVolts(CauseInput input) {
        return new CauseInput(
                input.kind(),
                input.points().stream().map(this::withUsualVolts).toList(),
                input.curve(),
                input.findings(),
                OptionalDouble.empty(),
                input.supplyVolts(),
                input.nozzleM3PerSecondPerRootPascal());
    }

    private SweptPoint withUsualVolts(SweptPoint point) {
        double volts =
                usualVolts.getOrDefault(point.percent(), point.voltsAtPins().value());
        return new SweptPoint(
                point.leg(),
                point.percent(),
                point.duty(),
                point.flow(),
                Uncertain.of(volts, point.voltsAtPins().standardUncertainty()),
                point.supplyAmps(),
                point.pressure(),
                point.pulses(),
                point.ampsVariation());
    }

    private static double volts(SweptPoint point) {
        return point.duty() * point.voltsAtPins().value() - (1 - point.duty()) * DemoCurve.FREEWHEEL_VOLTS;
    }

    /** What the causes of a unit depend on after it went through the plan. */
    CauseInput input(Plant plant) throws StandException {
        RunOutcome outcome = run(plant);
        Trace trace = outcome.trace();
        FindingInput findings = new FindingInput(
                trace, plan, SimulatedBoard.PWM_HZ, OptionalDouble.of(DemoCurve.FREEWHEEL_VOLTS), UnitSystem.US);
        return new CauseInput(
                plan.kind(),
                points(outcome),
                curve,
                Findings.of(findings),
                restVolts(trace),
                stand.supplyVolts(),
                stand.nozzleBehind(plan.wiring().meter()).m3PerSecondPerRootPascal());
    }

    private List<SweptPoint> points(RunOutcome outcome) {
        return SweptPoints.of(PointReading.all(outcome.trace(), plan.wiring().drive()));
    }

    private static OptionalDouble restVolts(Trace trace) {
        return trace.stretches().stream()
                .filter(stretch -> stretch.kind() == Stretch.Kind.REST)
                .limit(1)
                .flatMap(rest -> trace.during(rest).stream())
                .filter(Sample::armed)
                .mapToDouble(sample -> {
                    var channel = trace.channels().required(ChannelRole.VOLTS_AT_PINS);
                    return channel.read(sample);
                })
                .average();
    }

    private RunOutcome run(Plant plant) throws StandException {
        try (CoarseStand coarse = new CoarseStand(stand, plant)) {
            coarse.open();
            Map<String, String> usual = new HashMap<>();
            return new PlanRun(
                            coarse,
                            plan,
                            event -> {},
                            new StopButton(),
                            new SimulatedPerson(plant, usual),
                            Journal.NONE)
                    .carryOut();
        }
    }
}
