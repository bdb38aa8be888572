package org.pumpwright.host.plant;

import static org.pumpwright.host.plant.UsUnits.PSI;

/**
 * A demand switch that stops the motor at a pressure. Thread-safe.
 *
 * @param opensPascal pressure at which it opens; infinite where none is fitted
 * @param closesPascal pressure at which it closes again
 * @param delaySeconds how long its diaphragm and snap spring need
 * @param bounceSeconds how long the contact chatters after each change
 * @param sticksSeconds how much longer it stays open once it has opened; may be infinite
 */
public record PressureSwitchParameters(
        double opensPascal, double closesPascal, double delaySeconds, double bounceSeconds, double sticksSeconds) {

    /** Snap action of the switch; assumed, so that cycling comes out at the trade's 0.3 to 3 times a second. */
    private static final double DELAY_SECONDS = 0.15;

    /** Middle of the 5 to 20 ms told of such contacts. */
    private static final double BOUNCE_SECONDS = 0.015;

    public PressureSwitchParameters {
        Range.check("switch opening", opensPascal, 0, Double.POSITIVE_INFINITY, "Pa");
        Range.check("switch closing", closesPascal, 0, opensPascal, "Pa");
        Range.check("switch delay", delaySeconds, 0, 60, "s");
        Range.check("switch bounce", bounceSeconds, 0, 1, "s");
        Range.check("switch sticking", sticksSeconds, 0, Double.POSITIVE_INFINITY, "s");
    }

    /** A switch in working order with these pressures in psi. */
    static PressureSwitchParameters fitted(double opensPsi, double closesPsi) {
        return new PressureSwitchParameters(opensPsi * PSI, closesPsi * PSI, DELAY_SECONDS, BOUNCE_SECONDS, 0);
    }

    /** The usual demand switch: off at 60 psi, on at 45 psi; assumed. */
    public static PressureSwitchParameters usual() {
        return fitted(60, 45);
    }

    /** Never opens. */
    public static PressureSwitchParameters notFitted() {
        return new PressureSwitchParameters(Double.POSITIVE_INFINITY, 0, 0, 0, 0);
    }

    /** The same switch, staying open longer by some seconds. */
    public PressureSwitchParameters sticking(double seconds) {
        return new PressureSwitchParameters(opensPascal, closesPascal, delaySeconds, bounceSeconds, seconds);
    }
}
