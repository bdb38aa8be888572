package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.trace.Trace;

/** The checks of a stand that need no driven unit: for a look at the stand before the work. Thread-safe. */
public final class StandAtRestChecks {
    private StandAtRestChecks() {}

    /**
     * Supply, zeros, sensors and calibrations of a stand that was armed and not driven.
     *
     * @param trace recorded armed and at rest
     * @param stand what a stand in order shows
     */
    public static List<StandCheck> of(Trace trace, StandExpectations stand) {
        List<StandCheck> checks = new ArrayList<>(RestChecks.of(RestReading.of(trace), stand));
        checks.addAll(SensorChecks.of(trace, stand.day()));
        return checks;
    }
}
