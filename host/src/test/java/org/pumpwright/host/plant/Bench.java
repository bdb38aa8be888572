package org.pumpwright.host.plant;

import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;
import static org.pumpwright.host.plant.UsUnits.PSI;

import java.util.ArrayList;
import java.util.List;

/** What the tests do to a plant: hold a duty, collect edges, read in gallons per minute and psi. */
final class Bench {

    static final double STEP_SECONDS = 0.01;

    final PumpPlant plant;
    private final double nozzle;
    private final List<Double> edges = new ArrayList<>();
    private double now;
    private PlantReading last;

    Bench(PumpParameters parameters, SensorErrors errors, long seed) {
        plant = new PumpPlant(parameters, errors, seed);
        nozzle = parameters.stand().nozzleM3PerSecondRootPascal();
    }

    static Bench of(PumpParameters parameters) {
        return new Bench(parameters, SensorErrors.none(), 1);
    }

    /** Holds the duty and gives the last reading. */
    PlantReading hold(double duty, double seconds) {
        long steps = Math.round(seconds / STEP_SECONDS);
        for (long i = 0; i < steps; i++) {
            last = plant.step(STEP_SECONDS, new double[] {duty}, true);
            for (double offset : last.edgeOffsetsSeconds()[0]) {
                edges.add(now + offset);
            }
            now += STEP_SECONDS;
        }
        return last;
    }

    /** Edges since the last call. */
    double[] takeEdges() {
        double[] taken = edges.stream().mapToDouble(Double::doubleValue).toArray();
        edges.clear();
        return taken;
    }

    /** Flow through the nozzle at the last reading, from its pressure. */
    double gallonsPerMinute() {
        return nozzle * Math.sqrt(Math.max(0, last.pressurePa())) / GALLON_PER_MINUTE;
    }

    static PumpParameters withSupplyLimit(PumpParameters p, double amps) {
        StandParameters s = p.stand();
        return p.withStand(new StandParameters(
                s.openCircuitVolts(),
                s.supplyOhms(),
                s.leadOhms(),
                amps,
                s.freewheelVolts(),
                s.driveHertz(),
                s.leadDoublesWatts(),
                s.nozzleM3PerSecondRootPascal(),
                s.recirculationM3PerSecondRootPascal(),
                s.lineSettlingSeconds(),
                s.ambientKelvin(),
                s.waterKelvin(),
                s.lines()));
    }

    /** Warming is watched alone: a protector would end it. */
    static PumpParameters withoutProtector(PumpParameters p) {
        return p.withCircuit(p.circuit().withProtector(ProtectorParameters.notFitted()));
    }

    static PumpParameters withDriveAt(PumpParameters p, double hertz) {
        return p.withStand(p.stand().withDriveAt(hertz));
    }

    static double gpm(PumpSteadyState s) {
        return s.flowM3PerSecond() / GALLON_PER_MINUTE;
    }

    static double psi(PumpSteadyState s) {
        return s.pressurePa() / PSI;
    }

    static double rpm(PumpSteadyState s) {
        return s.speedRadPerSecond() * 30 / Math.PI;
    }
}
