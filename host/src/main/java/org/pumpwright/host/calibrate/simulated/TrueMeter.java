package org.pumpwright.host.calibrate.simulated;

import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;

/**
 * A meter whose K is known. Thread-safe.
 *
 * @param atHighFlow K without loss
 * @param loss flow b that its rotor loses
 */
public record TrueMeter(KFactor atHighFlow, FlowRate loss) {
    public KFactor at(FlowRate flow) {
        return new KFactor(atHighFlow.pulsesPerM3() * (1 - loss.m3PerSecond() / flow.m3PerSecond()));
    }
}
