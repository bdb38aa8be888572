package org.pumpwright.host.plant.driver;

/**
 * Current of a resistive-inductive load under a periodic switch, exact: two exponentials per period,
 * {@code i -> V/R} while on and {@code i -> -V_back/R} while off, the current never below zero. With a freewheel diode
 * V_back is its drop; without one it is the voltage at which the switch clamps, and the current ends within the pause.
 * Textbook circuit theory. Thread-safe.
 *
 * @param meanAmps mean over the period in the load
 * @param suppliedAmps mean over the period in the supply, which sees the load's current only while the switch is on
 * @param peakAmps highest current
 */
record SwitchedCurrent(double meanAmps, double suppliedAmps, double peakAmps) {

    static final SwitchedCurrent NONE = new SwitchedCurrent(0, 0, 0);

    /** Shares below this are a switch that stays off. */
    private static final double LEAST_SHARE = 1e-9;

    /** One circuit: volts and ohms while on, volts against the current and ohms while off. */
    record Circuit(double onVolts, double onOhms, double backVolts, double offOhms, double henry) {

        double targetAmps() {
            return onVolts / onOhms;
        }
    }

    static SwitchedCurrent of(Circuit c, double duty, double frequencyHertz) {
        if (duty < LEAST_SHARE) {
            return NONE;
        }
        double target = c.targetAmps();
        if (c.henry() == 0 || duty >= 1) {
            double share = Math.min(1, duty);
            return new SwitchedCurrent(share * target, share * target, target);
        }
        return inductive(c, duty / frequencyHertz, (1 - duty) / frequencyHertz);
    }

    private static SwitchedCurrent inductive(Circuit c, double onSeconds, double offSeconds) {
        double up = c.targetAmps();
        double down = -c.backVolts() / c.offOhms();
        double upTime = c.henry() / c.onOhms();
        double downTime = c.henry() / c.offOhms();
        double a = StrictMath.exp(-onSeconds / upTime);
        double b = StrictMath.exp(-offSeconds / downTime);
        double begin = Math.max(0, (down * (1 - b) + b * up * (1 - a)) / (1 - a * b));
        double peak = up + (begin - up) * a;
        double flowing = flowingSeconds(peak, down, downTime, offSeconds);
        double on = up * onSeconds + (begin - up) * upTime * (1 - a);
        double off = down * flowing + (peak - down) * downTime * (1 - StrictMath.exp(-flowing / downTime));
        double period = onSeconds + offSeconds;
        return new SwitchedCurrent((on + off) / period, on / period, peak);
    }

    private static double flowingSeconds(double peak, double down, double downTime, double offSeconds) {
        if (down == 0) {
            return offSeconds;
        }
        return Math.min(offSeconds, downTime * StrictMath.log((peak - down) / -down));
    }
}
