package org.pumpwright.host.grade.lump;

import org.pumpwright.host.quantity.Uncertain;

/**
 * The pump turning against a closed outlet, read in the same way as a {@link LumpPoint}. Only its torque enters: what flows
 * inside the head there depends on where a bypass opens. Thread-safe.
 *
 * @param effectiveVolts V, uncertainty above 0
 * @param motorAmps A, uncertainty above 0
 * @param pressure Pa, uncertainty above 0
 */
public record DeadHead(Uncertain effectiveVolts, Uncertain motorAmps, Uncertain pressure) {
    public DeadHead {
        LumpPoint.requireUncertain("dead-head volts", effectiveVolts);
        LumpPoint.requireUncertain("dead-head amps", motorAmps);
        LumpPoint.requireUncertain("dead-head pressure", pressure);
    }
}
