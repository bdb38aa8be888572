package org.pumpwright.host.app;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Grader;
import org.pumpwright.host.grade.GradingInput;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.plant.driver.DriverFault;
import org.pumpwright.host.plant.driver.DriverPlant;
import org.pumpwright.host.plant.driver.DriverPopulation;
import org.pumpwright.host.plant.driver.DriverStand;
import org.pumpwright.host.plant.driver.DummyLoad;
import org.pumpwright.host.plant.harness.HarnessFault;
import org.pumpwright.host.plant.harness.HarnessPlant;
import org.pumpwright.host.plant.harness.HarnessPopulation;
import org.pumpwright.host.plant.hydraulic.HydraulicFault;
import org.pumpwright.host.plant.hydraulic.HydraulicPlant;
import org.pumpwright.host.plant.hydraulic.HydraulicPopulation;
import org.pumpwright.host.plant.meter.MeterBench;
import org.pumpwright.host.plant.meter.MeterFault;
import org.pumpwright.host.plant.meter.MeterLoop;
import org.pumpwright.host.plant.meter.MeterPlant;
import org.pumpwright.host.plant.meter.MeterPopulation;
import org.pumpwright.host.plant.meter.ReturnedMeter;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.rule.RulesFile;
import org.pumpwright.host.run.PlanRun;
import org.pumpwright.host.run.RunOutcome;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.host.trace.Journal;

/** Drawn units on drawn sensors, taken through the shipped plans as the program does. */
final class KindBench {
    private static final long POPULATION = 2026;
    private static final Shelf SHELF = new Shelf(Firmware.root().resolve("fixtures"));

    private KindBench() {}

    static Plant plant(UnitKind kind, Fault fault, Severity severity, int number) {
        SensorErrors sensors = SensorErrors.drawn(1000 + number);
        return switch (kind) {
            case PUMP_12V -> throw new IllegalArgumentException("pumps have a curve");
            case HYDRAULIC_PUMP ->
                new HydraulicPlant(
                        ((HydraulicFault) fault).applyTo(new HydraulicPopulation(POPULATION).unit(number), severity),
                        sensors,
                        number);
            case DRIVER ->
                new DriverPlant(
                        ((DriverFault) fault).applyTo(new DriverPopulation(POPULATION).unit(number), severity),
                        DriverStand.with(DummyLoad.resistor()),
                        sensors,
                        number);
            case METER -> {
                ReturnedMeter unit = new MeterPopulation(ReturnedMeter.small(), POPULATION).unit(number);
                MeterBench bench = ((MeterFault) fault).applyTo(new MeterBench(unit, MeterLoop.small()), severity);
                yield new MeterPlant(bench.unit(), bench.loop(), sensors, number);
            }
            case HARNESS ->
                new HarnessPlant(
                        ((HarnessFault) fault).applyTo(new HarnessPopulation(POPULATION).unit(number), severity),
                        sensors,
                        number);
        };
    }

    static Plan plan(String name) throws Exception {
        return SHELF.plan(name);
    }

    static RunOutcome run(Plant plant, Plan plan, Map<String, String> answers) throws Exception {
        StandDescription description = TestStands.described("simulated");
        SimulatedBoard board = new SimulatedBoard(plant, description.channels());
        try (WireStand stand = new WireStand(description, () -> new SimulatedLine(board, 0), WireTiming.STANDARD)) {
            stand.open();
            return new PlanRun(
                            stand,
                            plan,
                            event -> {},
                            new StopButton(),
                            new SimulatedPerson(plant, answers),
                            Journal.NONE)
                    .carryOut();
        }
    }

    /** The grade that the program gives, by the shelf's rules and model. */
    static Grade grade(RunOutcome outcome, Plan plan) throws Exception {
        UnitModel model = SHELF.model("demo-" + plan.kind().word());
        StandDescription stand = TestStands.described("simulated");
        StandDescription.Nozzle nozzle = stand.nozzleBehind(plan.wiring().meter());
        GradingInput input = new GradingInput(
                outcome.trace(),
                outcome.ending(),
                plan,
                Optional.empty(),
                new Conditions(model.id(), stand.driver(), SimulatedBoard.PWM_HZ, nozzle.id(), stand.fluid()),
                new StandExpectations(stand.supplyVolts(), nozzle.m3PerSecondPerRootPascal()),
                UnitSystem.US);
        Path rules = Firmware.root().resolve("fixtures/rules/" + model.rules() + ".yaml");
        return Grader.grade(input.by(RulesFile.read(rules)).of(model.nominal()));
    }
}
