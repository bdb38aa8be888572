package org.pumpwright.host.calibrate.field;

import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.quantity.Volume;

/** A corrected K from what the monitor showed and what was caught. Thread-safe. */
public final class NewK {
    private NewK() {}

    /**
     * {@code new = old * indicated / caught}: a monitor that shows too much needs more pulses per gallon. For a figure in gallons
     * per pulse it is the other way round.
     */
    public static KFactor of(KFactor old, Volume indicated, Volume caught) {
        Require.inRange("indicated volume", indicated.m3(), 1e-6, 1e4, "m3");
        Require.inRange("caught volume", caught.m3(), 1e-6, 1e4, "m3");
        return new KFactor(old.pulsesPerM3() * indicated.m3() / caught.m3());
    }

    /** By how much the monitor shows too much, as a share of what was caught. */
    public static double errorShare(Volume indicated, Volume caught) {
        return indicated.m3() / caught.m3() - 1;
    }

    /**
     * The new K with the uncertainty that catching and reading leave in it, pulses/m3.
     *
     * @param indicatedHalfWidth the reading is good to plus and minus this
     * @param caughtHalfWidth the caught volume is good to plus and minus this
     */
    public static Uncertain withUncertainty(
            KFactor old, Volume indicated, Volume indicatedHalfWidth, Volume caught, Volume caughtHalfWidth) {
        double k = of(old, indicated, caught).pulsesPerM3();
        double share = Math.hypot(indicatedHalfWidth.m3() / indicated.m3(), caughtHalfWidth.m3() / caught.m3());
        return Uncertain.of(k, k * share / Math.sqrt(3));
    }
}
