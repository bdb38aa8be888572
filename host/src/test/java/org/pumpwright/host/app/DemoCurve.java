package org.pumpwright.host.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.curve.CurveBuilder;
import org.pumpwright.host.curve.CurveFile;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.KnownGoodUnit;
import org.pumpwright.host.curve.ToleranceFactor;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.grade.PointReading;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
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

/**
 * Makes the healthy curve of the demo pump the way a shop would: known-good units, one after the other, through the plan on
 * a stand. Here all of them are simulated, and on a stand whose sensors have noise but no errors of their own.
 * {@code main} writes the shipped file anew.
 */
final class DemoCurve {
    static final int UNITS = 20;
    /** Flow and motor amps at three set points. */
    static final int JUDGED_FEATURES = 6;

    static final double FREEWHEEL_VOLTS = 0.5;
    private static final long POPULATION_SEED = 2026;

    private DemoCurve() {}

    public static void main(String[] arguments) throws Exception {
        CurveFile.write(make(Path.of(arguments[0])), Path.of(arguments[0], "curves", "demo-pump.yaml"));
    }

    static HealthyCurve make(Path data) throws OrderException, DataFileException, StandException, IOException {
        Shelf shelf = new Shelf(data);
        StandDescription stand = shelf.stand("simulated");
        Plan plan = shelf.plan("quick-12v-pump");
        List<KnownGoodUnit> units = new ArrayList<>();
        List<PumpParameters> population = new PumpPopulation(POPULATION_SEED).units(UNITS);
        for (int i = 0; i < UNITS; i++) {
            PumpPlant plant = new PumpPlant(population.get(i), SensorErrors.noiseOnly(), POPULATION_SEED + i);
            units.add(measure(stand, plan, plant));
        }
        double[] grid = CurveBuilder.grid(units, 9);
        return new HealthyCurve(
                "demo-pump",
                1,
                "Demo 5 gal/min diaphragm pump, simulated units, for practice only",
                new Conditions(
                        "demo-pump",
                        stand.driver(),
                        SimulatedBoard.PWM_HZ,
                        stand.nozzle().id(),
                        stand.fluid()),
                true,
                UNITS,
                ToleranceFactor.joint(UNITS, JUDGED_FEATURES, 0.95, 0.95),
                "95 % of healthy units inside all 6 limits, 95 % confidence for each",
                FREEWHEEL_VOLTS,
                CurveBuilder.points(units, grid),
                "program, from simulated units",
                "2026-11-25");
    }

    private static KnownGoodUnit measure(StandDescription description, Plan plan, PumpPlant plant)
            throws StandException {
        SimulatedBoard board = new SimulatedBoard(plant, description.channels());
        try (WireStand stand = new WireStand(description, () -> new SimulatedLine(board, 0), WireTiming.STANDARD)) {
            stand.open();
            RunOutcome outcome =
                    new PlanRun(stand, plan, event -> {}, new StopButton(), Operator.NOBODY, Journal.NONE).carryOut();
            if (!outcome.ending().completed()) {
                throw new IllegalStateException(outcome.ending().reason());
            }
            return new KnownGoodUnit(PointReading.all(outcome.trace()).stream()
                    .filter(point -> point.mark().leg() == Leg.UP)
                    .map(point -> new KnownGoodUnit.Point(
                            point.effectiveVolts(FREEWHEEL_VOLTS).value(),
                            point.flow().value(),
                            point.motorAmps().value()))
                    .toList());
        }
    }
}
