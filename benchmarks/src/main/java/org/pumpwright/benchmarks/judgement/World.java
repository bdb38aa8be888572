package org.pumpwright.benchmarks.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.pumpwright.host.curve.CurvePopulation;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.Interpolation;
import org.pumpwright.host.curve.KnownGoodRun;
import org.pumpwright.host.curve.KnownGoodUnit;
import org.pumpwright.host.grade.PointReading;
import org.pumpwright.host.plant.FaultMix;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPhysics;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.Streams;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.trace.Leg;

/**
 * One model of pump with its healthy curve, which was built the product's way: 20 known-good units, each run twice on one
 * stand. Thread-safe.
 *
 * @param number tells worlds apart, and decides everything that is random in one
 * @param changed whether its physics are not those of the causes' patterns
 * @param nominal the model's nominal unit
 * @param curve what its known-good units showed
 * @param fullFlow mean flow of the known-good units at full duty, m3/s
 */
record World(int number, boolean changed, PumpParameters nominal, HealthyCurve curve, double fullFlow) {
    static final int KNOWN_GOOD = 20;

    /** The command line's own default. */
    private static final int CURVE_POINTS = 12;

    /** About 380 rpm (assumed): friction is then a tenth higher at 30 % duty, and six tenths at 20 %. */
    private static final double STRIBECK_RAD_PER_SECOND = 40;

    private static final double EXPONENT_FROM = 0.46;
    private static final double EXPONENT_WIDTH = 0.08;

    private static final int MOST_ATTEMPTS = 20;
    private static final long NOMINAL_STREAM = -401;
    private static final long FAULT_STREAM = -1_000_000;
    private static final long CURVE_SEED = 7_000_000;
    private static final long UNIT_SEED = 9_000_000;

    /** Makes the world of a number. */
    static World of(TestStand stand, int number, boolean changed) {
        for (int attempt = 0; ; attempt++) {
            try {
                return of(stand, number, changed ? changedNominal(number, attempt) : PumpParameters.healthy(), changed);
            } catch (IllegalArgumentException e) {
                // Some known-good units stand still at the plan's lowest point: their shop would write another plan.
                if (!changed || attempt == MOST_ATTEMPTS) {
                    throw e;
                }
            }
        }
    }

    private static World of(TestStand stand, int number, PumpParameters nominal, boolean changed) {
        PumpPopulation population = new PumpPopulation(CURVE_SEED + number, nominal);
        SensorErrors sensors = curveSensors(number);
        List<UnitRun> runs = IntStream.range(0, 2 * KNOWN_GOOD)
                .parallel()
                .mapToObj(i -> stand.run(population.unit(i / 2), sensors, CURVE_SEED + 1000L * number + i))
                .toList();
        List<KnownGoodRun> known = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            known.add(new KnownGoodRun("unit " + i / 2, readings(runs.get(i))));
        }
        CurvePopulation found = CurvePopulation.of(known, CURVE_POINTS);
        HealthyCurve curve = new HealthyCurve(
                "simulated-" + number,
                1,
                "Simulated units",
                stand.conditions(),
                true,
                found.units(),
                found.jointFactor(),
                "99 % of healthy units inside the whole band",
                TestStand.FREEWHEEL_VOLTS,
                found.points(),
                "benchmark",
                "2026-01-01",
                Interpolation.MONOTONE,
                Optional.empty(),
                Optional.empty(),
                List.of());
        double full = known.stream()
                .mapToDouble(k -> k.readings()
                        .points()
                        .get(k.readings().points().size() - 1)
                        .flowM3PerSecond())
                .average()
                .orElseThrow();
        return new World(number, changed, nominal, curve, full);
    }

    /** The sensors of the stand on which the curve was made. */
    static SensorErrors curveSensors(int number) {
        return SensorErrors.drawn(CURVE_SEED + number);
    }

    private static PumpParameters changedNominal(int number, int attempt) {
        Random random = Streams.stream(number, NOMINAL_STREAM - attempt);
        PumpPhysics physics = PumpPhysics.PLAIN
                .withStribeckAt(STRIBECK_RAD_PER_SECOND)
                .withNozzleExponent(EXPONENT_FROM + EXPONENT_WIDTH * random.nextDouble());
        PumpParameters healthy = PumpParameters.healthy();
        return ParameterErrors.nominal(healthy, random)
                .withStand(healthy.stand().withDriveAt(SimulatedBoard.PWM_HZ))
                .withPhysics(physics);
    }

    private static KnownGoodUnit readings(UnitRun run) {
        return new KnownGoodUnit(PointReading.all(run.trace()).stream()
                .filter(point -> point.mark().leg() == Leg.UP && point.duty() > 0)
                .filter(point -> point.mark().settled())
                .map(point -> new KnownGoodUnit.Point(
                        point.effectiveVolts(TestStand.FREEWHEEL_VOLTS).value(),
                        point.flow().value(),
                        point.motorAmps().value()))
                .toList());
    }

    /** A healthy unit that had no part in the curve. */
    PumpParameters unit(int unit) {
        return new PumpPopulation(UNIT_SEED + number, nominal).unit(unit);
    }

    /** The same with faults; where the physics are changed, of a size that the causes' patterns do not know. */
    PumpParameters faulty(int unit, FaultMix mix) {
        PumpParameters before = unit(unit);
        PumpParameters after = mix.applyTo(before);
        return changed
                ? ParameterErrors.fault(before, after, Streams.stream(UNIT_SEED + number, FAULT_STREAM - unit))
                : after;
    }

    /** Sensors of a stand that is not the one on which the curve was made. */
    SensorErrors sensors(int unit) {
        return SensorErrors.drawn(UNIT_SEED + 1_000_000L * (1 + number) + unit);
    }

    long seed(int unit) {
        return UNIT_SEED + 2_000_003L * (1 + number) + unit;
    }
}
