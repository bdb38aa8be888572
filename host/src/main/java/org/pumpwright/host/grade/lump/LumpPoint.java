package org.pumpwright.host.grade.lump;

import java.util.Optional;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * One steady point of a sweep, the pump turning against its nozzle. Each uncertainty is what this point has for itself;
 * what all points share stands in {@link SharedErrors}. Thread-safe.
 *
 * @param effectiveVolts mean volts across the motor, brushes included: {@code d V_on - (1 - d) V_f} with {@code V_on} the
 *     volts at the pins while the switch conducts; uncertainty above 0
 * @param motorAmps mean motor current, A; uncertainty above 0
 * @param flow through the meter, m3/s, value and uncertainty above 0
 * @param pressure at the outlet, Pa, uncertainty above 0; empty where it is not read and the nozzle has to tell it
 */
public record LumpPoint(Uncertain effectiveVolts, Uncertain motorAmps, Uncertain flow, Optional<Uncertain> pressure) {
    public LumpPoint {
        requireUncertain("effective volts", effectiveVolts);
        requireUncertain("motor amps", motorAmps);
        requireUncertain("flow", flow);
        pressure.ifPresent(read -> requireUncertain("pressure", read));
        Require.inRange("flow of a point", flow.value(), Double.MIN_NORMAL, 1, "m3/s");
    }

    static void requireUncertain(String what, Uncertain quantity) {
        Require.inRange(
                "standard uncertainty of the " + what, quantity.standardUncertainty(), Double.MIN_NORMAL, 1e9, "");
    }
}
