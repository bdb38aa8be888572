package org.pumpwright.host.plant.meter;

import org.pumpwright.host.plant.Range;

/**
 * What is lost or added between the rotor and the stand's input. Thread-safe.
 *
 * @param missingShare share of the pulses that do not arrive, at random
 * @param doubleShare share of the pulses that arrive twice
 * @param lostBlades blades or magnets that give no pulse
 * @param interferenceShare share of the drive's periods that give a pulse while the meter is silent
 */
public record SignalDefects(double missingShare, double doubleShare, int lostBlades, double interferenceShare) {

    static final SignalDefects NONE = new SignalDefects(0, 0, 0, 0);

    public SignalDefects {
        Range.check("missing pulses", missingShare, 0, 1, "");
        Range.check("double pulses", doubleShare, 0, 1, "");
        Range.check("lost blades", lostBlades, 0, 100, "");
        Range.check("interference", interferenceShare, 0, 1, "");
    }
}
