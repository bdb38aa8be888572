package org.pumpwright.host.grade;

import java.util.List;
import java.util.stream.IntStream;
import org.pumpwright.host.curve.CurveBuilder;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.KnownGoodUnit;
import org.pumpwright.host.curve.KnownGoodUnit.Point;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.trace.Channels;

/** A healthy curve from simulated known-good units, each measured as any unit is. */
final class SimulatedCurve {
    private SimulatedCurve() {}

    static HealthyCurve of(int units, long seed, double toleranceFactor, Channels channels) {
        PumpPopulation population = new PumpPopulation(seed);
        List<KnownGoodUnit> known = IntStream.range(0, units)
                .mapToObj(i -> new PumpPlant(population.unit(i), SensorErrors.drawn(1000 * seed + i), i))
                .map(plant -> measure(plant, channels))
                .toList();
        return new HealthyCurve(
                "simulated",
                1,
                "Simulated units",
                Bench.CONDITIONS,
                true,
                units,
                toleranceFactor,
                "95 % of units in all features with 95 % confidence",
                Bench.FREEWHEEL_VOLTS,
                CurveBuilder.points(known, CurveBuilder.grid(known, 12)),
                "tests",
                "2026-01-01");
    }

    private static KnownGoodUnit measure(PumpPlant plant, Channels channels) {
        return new KnownGoodUnit(PointReading.all(
                        PlantRun.of(plant, Bench.plan(), channels).trace())
                .stream()
                .filter(PointReading::up)
                .map(p -> new Point(
                        p.effectiveVolts(Bench.FREEWHEEL_VOLTS).value(),
                        p.flow().value(),
                        p.motorAmps().value()))
                .toList());
    }
}
