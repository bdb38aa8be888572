package org.pumpwright.host.calibrate.simulated;

import org.pumpwright.host.calibrate.Bench;
import org.pumpwright.host.calibrate.Measuring;
import org.pumpwright.host.calibrate.Weighing;

/**
 * The errors that stay the same over the runs at one flow.
 *
 * @param lineM3 held back in the line
 * @param instrumentOff linearity, drift and splash together in kg, or level and residue together in m3
 */
record FlowErrors(double lineM3, double instrumentOff) {
    static FlowErrors draw(Bench bench, Dice dice) {
        return new FlowErrors(dice.flat(bench.lineHalfWidthM3()), instrument(bench, dice));
    }

    private static double instrument(Bench bench, Dice dice) {
        if (bench.method() instanceof Weighing weighing) {
            return dice.flat(weighing.scale().linearityKg())
                    + dice.flat(weighing.scale().driftKg())
                    + dice.flat(weighing.splashKg());
        }
        if (bench.method() instanceof Measuring vessel) {
            return dice.flat(vessel.levelM3()) + dice.flat(vessel.residueM3());
        }
        return 0;
    }
}
