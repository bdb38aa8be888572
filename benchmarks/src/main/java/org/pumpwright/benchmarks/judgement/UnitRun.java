package org.pumpwright.benchmarks.judgement;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Trace;

/**
 * One unit's run. Thread-safe.
 *
 * @param unit what it truly is
 * @param trace what was recorded
 * @param ending how it ended
 * @param kelvins winding temperature in the middle of each point of the trace
 */
record UnitRun(PumpParameters unit, Trace trace, Ending ending, List<Double> kelvins) {
    private static final double SAME_DUTY = 1e-3;

    UnitRun {
        kelvins = List.copyOf(kelvins);
    }

    /** Winding temperature while each of these was measured on the way up; empty unless all were. */
    List<Double> kelvins(List<Feature> features) {
        List<Double> found = new ArrayList<>();
        for (Feature feature : features) {
            for (int i = 0; i < kelvins.size(); i++) {
                PointMark point = trace.points().get(i);
                if (point.leg() == Leg.UP && Math.abs(point.commanded().fraction() - feature.duty()) < SAME_DUTY) {
                    found.add(kelvins.get(i));
                }
            }
        }
        return found.size() == features.size() ? found : List.of();
    }
}
