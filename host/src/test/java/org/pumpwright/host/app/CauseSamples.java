package org.pumpwright.host.app;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.grade.cause.AtlasMaker;
import org.pumpwright.host.grade.cause.CauseInput;
import org.pumpwright.host.grade.cause.Evidence;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;

/** Many simulated units of one kind through one plan. */
final class CauseSamples {
    /** One unit. */
    record Sample(String fault, int degree, int number, Evidence evidence, Evidence atUsualVolts) {}

    private final CauseUnits units;
    private final CauseRuns runs;
    private final UnitKind kind;

    CauseSamples(StandDescription stand, Plan plan, long seed, int curveUnits) throws StandException {
        kind = plan.kind();
        units = new CauseUnits(kind, seed);
        CauseRuns without = CauseRuns.of(stand, plan);
        if (kind == UnitKind.PUMP_12V) {
            Fault healthy = PracticeUnit.faults(kind).get(0);
            List<Plant> known = IntStream.range(0, curveUnits)
                    .mapToObj(i -> units.plant(healthy, 2, 100_000 + i))
                    .toList();
            runs = without.withCurveOf(known);
        } else {
            runs = without;
        }
    }

    List<Sample> healthy(int count) throws StandException {
        return some(PracticeUnit.faults(kind).get(0), 2, 0, count);
    }

    List<Sample> some(Fault fault, int degree, int from, int count) throws StandException {
        List<Sample> all = new ArrayList<>();
        for (int i = from; i < from + count; i++) {
            CauseInput input = runs.input(units.plant(fault, degree, i));
            all.add(new Sample(fault.word(), degree, i, Evidence.of(input), Evidence.of(runs.withUsualVolts(input))));
        }
        return all;
    }

    /** Every fault of the kind at every degree it has; the units are some of the healthy ones, each time others. */
    Map<String, List<List<AtlasMaker.Unit>>> faults(int count, int healthyUnits, PrintStream progress)
            throws StandException {
        Map<String, List<List<AtlasMaker.Unit>>> all = new LinkedHashMap<>();
        int next = 0;
        for (Fault fault : CauseUnits.faults(kind)) {
            List<List<AtlasMaker.Unit>> degrees = new ArrayList<>();
            for (int degree : CauseUnits.degrees(fault)) {
                degrees.add(units(some(fault, degree, next, count)));
                next = (next + count) % healthyUnits;
            }
            all.put(fault.word(), degrees);
            progress.println(fault.word());
        }
        return all;
    }

    static List<AtlasMaker.Unit> units(List<Sample> samples) {
        return samples.stream()
                .map(sample -> new AtlasMaker.Unit(sample.number(), sample.evidence()))
                .toList();
    }
}
