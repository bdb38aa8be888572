package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.catalog.UnitKind;

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
        boolean voltsAtUnit = readsVoltsAtUnit(input.plan().kind());
        RestChecks.of(rest, input.stand()).stream()
                .filter(check -> voltsAtUnit || rest.isEmpty() || !check.name().equals(RestChecks.SUPPLY))
                .filter(check -> !ofTheUnit(input.plan().kind()).equals(check.name()))
                .forEach(checks::add);
        checks.addAll(SensorChecks.of(input.trace(), input.stand().day()));
        PressureSensorCheck.of(input.trace(), input.units()).ifPresent(checks::add);
        checks.addAll(PowerChecks.of(voltsAtUnit ? rest : Optional.empty(), points, input.stand()));
        CurrentSensorCheck.of(input, points).ifPresent(checks::add);
        checks.addAll(WaterChecks.of(input, points));
        checks.add(RunCheck.judgedPoints(input, points));
        input.curve().ifPresent(curve -> checks.addAll(CurveChecks.of(input, curve, points)));
        return checks;
    }

    /** At a driver or a harness a person moves the voltmeter from place to place: it tells nothing of the supply. */
    private static boolean readsVoltsAtUnit(UnitKind kind) {
        return switch (kind) {
            case PUMP_12V, HYDRAULIC_PUMP, METER -> true;
            case DRIVER, HARNESS -> false;
        };
    }

    /**
     * The check at rest that a fault of this kind of unit would trip: a driver hangs on the supply itself, and a valve that is
     * held open lets its pump run. Both are told among the readings.
     */
    private static String ofTheUnit(UnitKind kind) {
        return switch (kind) {
            case DRIVER -> RestChecks.ZERO_CURRENT;
            case HYDRAULIC_PUMP -> RestChecks.ZERO_PULSES;
            case PUMP_12V, METER, HARNESS -> "";
        };
    }

    /** A check whose remedy is only given when it did not hold. */
    static StandCheck check(String name, boolean ok, String finding, String remedy) {
        return new StandCheck(name, ok, finding, ok ? "" : remedy);
    }
}
