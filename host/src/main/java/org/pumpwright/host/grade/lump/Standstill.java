package org.pumpwright.host.grade.lump;

import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * The motor at rest under a pulse too weak to turn it. Thread-safe.
 *
 * @param ohms volts across the motor over motor amps, the drop of the brushes included; uncertainty above 0
 * @param amps motor current of the pulse, A, above 0: it says how much of the ohms the brushes' drop is
 */
public record Standstill(Uncertain ohms, double amps) {
    public Standstill {
        LumpPoint.requireUncertain("ohms at standstill", ohms);
        Require.inRange("amps at standstill", amps, 1e-3, 1e3, "A");
    }
}
