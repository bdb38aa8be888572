package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Every check that the stand and the run were fit to judge a unit. The limits are chosen so that a fault of the unit does
 * not trip them; they are common practice, no source, unless a line says otherwise. Thread-safe.
 */
final class StandChecks {
    private StandChecks() {}

    /** All checks, in the order in which a technician would look. */
    static List<StandCheck> of(GradingInput input, List<PointReading> points) {
        List<StandCheck> checks = new ArrayList<>();
        Optional<RestReading> rest = RestReading.of(input.trace());
        checks.add(RunCheck.ending(input.ending()));
        checks.addAll(RestChecks.of(rest, input.stand()));
        checks.addAll(SensorChecks.of(input.trace(), input.stand().day()));
        checks.addAll(PowerChecks.of(rest, points, input.stand()));
        checks.addAll(WaterChecks.of(input, points));
        checks.add(RunCheck.judgedPoints(input, points));
        input.curve().ifPresent(curve -> checks.addAll(CurveChecks.of(input, curve, points)));
        return checks;
    }

    /** A check whose remedy is only given when it did not hold. */
    static StandCheck check(String name, boolean ok, String finding, String remedy) {
        return new StandCheck(name, ok, finding, ok ? "" : remedy);
    }
}
