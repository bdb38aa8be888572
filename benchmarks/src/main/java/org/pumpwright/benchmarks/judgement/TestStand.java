package org.pumpwright.benchmarks.judgement;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Grader;
import org.pumpwright.host.grade.GradingInput;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.rule.GradingRules;
import org.pumpwright.host.rule.RulesFile;
import org.pumpwright.host.run.PlanRun;
import org.pumpwright.host.run.RunEvent;
import org.pumpwright.host.run.RunOutcome;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Journal;

/** The shipped simulated stand with a shipped plan, as everybody has them. Thread-safe. */
final class TestStand {
    static final double FREEWHEEL_VOLTS = 0.5;
    /** Two minutes: a sweep up and down, nothing else. */
    static final String QUICK = "quick-12v-pump";

    /** With standstill, start, dead-head and twice the set points. */
    static final String FULL = "full-12v-pump";

    private static final String MODEL = "demo-pump";
    private static final String RULES = "pump-12v.yaml";

    private final Plan plan;
    private final StandDescription description;
    private final GradingRules rules;

    TestStand(Path fixtures, String planName) throws Exception {
        Shelf shelf = new Shelf(fixtures);
        plan = shelf.plan(planName);
        description = shelf.stand("simulated");
        rules = RulesFile.read(fixtures.resolve("rules").resolve(RULES));
    }

    Plan plan() {
        return plan;
    }

    StandDescription description() {
        return description;
    }

    Conditions conditions() {
        return new Conditions(
                MODEL,
                description.driver(),
                SimulatedBoard.PWM_HZ,
                description.nozzle().id(),
                description.fluid());
    }

    /** Takes a unit through the whole plan, by way of board, line and protocol. */
    UnitRun run(PumpParameters unit, SensorErrors sensors, long seed) {
        WatchedPlant plant = new WatchedPlant(new PumpPlant(unit, sensors, seed));
        List<Double> pointsDone = new ArrayList<>();
        SimulatedLine line = new SimulatedLine(new SimulatedBoard(plant, description.channels()), 0);
        try (WireStand stand = new WireStand(description, () -> line, WireTiming.STANDARD)) {
            stand.open();
            RunOutcome outcome = new PlanRun(
                            stand,
                            plan,
                            event -> {
                                if (event instanceof RunEvent.PointDone) {
                                    pointsDone.add(plant.seconds());
                                }
                            },
                            new StopButton(),
                            new TestPerson(plant),
                            Journal.NONE)
                    .carryOut();
            if (outcome.ending().kind() == Ending.Kind.PROGRAM_FAULT) {
                throw new IllegalStateException(outcome.ending().reason());
            }
            return new UnitRun(unit, outcome.trace(), outcome.ending(), plant.kelvins(outcome.trace(), pointsDone));
        } catch (StandException e) {
            throw new IllegalStateException("the simulated stand failed", e);
        }
    }

    Grade grade(UnitRun run, HealthyCurve curve) {
        return Grader.grade(input(run, curve));
    }

    GradingInput input(UnitRun run, HealthyCurve curve) {
        return new GradingInput(
                        run.trace(),
                        run.ending(),
                        plan,
                        Optional.of(curve),
                        conditions(),
                        new StandExpectations(
                                description.supplyVolts(), description.nozzle().m3PerSecondPerRootPascal()),
                        UnitSystem.US)
                .by(rules);
    }
}
