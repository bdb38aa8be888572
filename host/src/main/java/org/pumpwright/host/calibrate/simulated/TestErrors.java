package org.pumpwright.host.calibrate.simulated;

import org.pumpwright.host.calibrate.Bench;
import org.pumpwright.host.calibrate.Comparing;
import org.pumpwright.host.calibrate.Measuring;
import org.pumpwright.host.calibrate.Method;
import org.pumpwright.host.calibrate.Weighing;
import org.pumpwright.host.calibrate.fluid.Water;

/**
 * The errors that stay the same through a test.
 *
 * @param celsius true temperature
 * @param celsiusOff true less shown temperature
 * @param instrumentOff of the scale in kg, of a vessel's marks or a master meter as a share
 * @param liquidKgPerM3 true density
 * @param airKgPerM3 true density of the air
 * @param switchSeconds begin and end together
 */
record TestErrors(
        double celsius,
        double celsiusOff,
        double instrumentOff,
        double liquidKgPerM3,
        double airKgPerM3,
        double switchSeconds) {
    static TestErrors draw(Bench bench, double celsius, Dice dice) {
        double half = bench.timing().switchHalfWidthSeconds();
        Method method = bench.method();
        double air = method instanceof Weighing weighing
                ? weighing.air().kgPerM3() + dice.flat(weighing.airHalfWidthKgPerM3())
                : 1.2;
        Water tap = Water.TAP;
        return new TestErrors(
                celsius,
                dice.flat(bench.thermometer().halfWidthKelvin()),
                instrument(method, dice),
                KellWater.kgPerM3(celsius) + tap.allowanceKgPerM3() + dice.flat(tap.halfWidthKgPerM3()),
                air,
                dice.flat(half) + dice.flat(half));
    }

    private static double instrument(Method method, Dice dice) {
        if (method instanceof Weighing weighing) {
            return dice.normal(weighing.scale().expandedKg() / weighing.scale().coverage());
        }
        if (method instanceof Measuring vessel) {
            return dice.normal(vessel.marksShare() / vessel.coverage());
        }
        Comparing master = (Comparing) method;
        return dice.normal(master.expandedShare() / master.coverage()) + dice.flat(master.driftShare());
    }
}
