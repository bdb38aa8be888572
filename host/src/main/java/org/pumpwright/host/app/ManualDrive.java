package org.pumpwright.host.app;

import java.util.List;
import java.util.Locale;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.plan.StopRules;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.trace.Ending;

/**
 * One duty held by hand, outside every plan: to prime, to look, to listen. It keeps a record and grades nothing.
 * Thread-safe.
 *
 * @param duty the set point
 * @param seconds how long, 0.5 to 600
 * @param drive number of the drive, 0 or 1
 * @param meter number of the meter that is shown, 0 or 1
 */
public record ManualDrive(Duty duty, double seconds, int drive, int meter) {
    /** Name of its plan in every record. */
    public static final String PLAN = "manual";

    private static final double RAMP_SECONDS = 0.5;
    private static final double SIGN_OF_LIFE_SECONDS = 120;
    private static final double AMPS = 28;
    private static final double PRESSURE_PSI = 120;
    private static final double SPARE_SECONDS = 30;

    public ManualDrive {
        Require.inRange("time", seconds, 0.5, 600, "s");
        Require.inRange("drive", drive, 0, 1, "");
        Require.inRange("meter", meter, 0, 1, "");
    }

    /** What stands in the place of a model where none is named. */
    UnitModel anyUnit() {
        UnitKind kind = drive == 0 ? UnitKind.PUMP_12V : UnitKind.HYDRAULIC_PUMP;
        return new UnitModel(PLAN, "a unit driven by hand, no model named", kind, PLAN, false, AMPS);
    }

    Plan plan(UnitKind kind) {
        Hold hold = new Hold("hold", Reading.NOTHING, duty, seconds, RAMP_SECONDS, 1, 0, SIGN_OF_LIFE_SECONDS);
        return new Plan(
                PLAN,
                1,
                "MANUAL - NOT GRADED",
                kind,
                false,
                new Plan.Wiring(drive, meter),
                List.of(hold),
                List.of(),
                new StopRules(AMPS, 0.2, 0, Pressure.ofPsi(PRESSURE_PSI).pascals(), seconds + SPARE_SECONDS));
    }

    Grade grade(Ending ending) {
        String held = String.format(
                Locale.ROOT, "drive %d at %s, %.1f s asked for: %s", drive, duty.print(), seconds, ending.reason());
        return new Grade(
                Verdict.NOT_TESTED,
                List.of("MANUAL - NOT GRADED", held),
                List.of(),
                List.of(),
                List.of(),
                "run a plan: what is driven by hand says nothing of the unit",
                "",
                false);
    }
}
