package org.pumpwright.host.plant.hydraulic;

import org.pumpwright.host.plant.Range;

/**
 * The valve's coil and its plug. Assumed values. Thread-safe.
 *
 * @param ohmsAt20Celsius winding at 20 °C
 * @param seriesOhms plug and joints beyond the stand's own lead; does not warm
 * @param forceShare force per ampere against a coil with all its turns, 0..1
 * @param henry inductance
 * @param kelvinPerWatt rise per watt when warmed through
 * @param warmingSeconds time constant of the rise
 * @param startRiseKelvin how much warmer than the air the coil is at the start
 */
public record CoilParameters(
        double ohmsAt20Celsius,
        double seriesOhms,
        double forceShare,
        double henry,
        double kelvinPerWatt,
        double warmingSeconds,
        double startRiseKelvin) {

    /** Large enough that the current is nil to any ammeter, finite so that no arithmetic breaks. */
    static final double OPEN_OHMS = 1e9;

    /** Share per kelvin by which copper's resistance rises, handbook value at 20 °C (1/254.5). */
    private static final double COPPER_PER_KELVIN = 0.00393;

    public CoilParameters {
        Range.check("coil resistance", ohmsAt20Celsius, 0.1, 1000, "ohm");
        Range.check("plug resistance", seriesOhms, 0, OPEN_OHMS, "ohm");
        Range.check("coil force share", forceShare, 0, 2, "");
        Range.check("coil inductance", henry, 1e-6, 10, "H");
        Range.check("coil thermal resistance", kelvinPerWatt, 0, 100, "K/W");
        Range.check("coil warming time", warmingSeconds, 1, 1e5, "s");
        Range.check("coil rise at the start", startRiseKelvin, 0, 150, "K");
    }

    /** A 12 V coil in good order. */
    static CoilParameters healthy() {
        return new CoilParameters(7.2, 0, 1, 0.030, 3.6, 20 * 60, 0);
    }

    /** The same with another winding: ohms at 20 °C and force share. */
    public CoilParameters withWinding(double ohms, double force) {
        return new CoilParameters(ohms, seriesOhms, force, henry, kelvinPerWatt, warmingSeconds, startRiseKelvin);
    }

    /** The same with other ohms in its plug. */
    public CoilParameters withSeriesOhms(double ohms) {
        return new CoilParameters(
                ohmsAt20Celsius, ohms, forceShare, henry, kelvinPerWatt, warmingSeconds, startRiseKelvin);
    }

    /** The same, warmer than the air by this many kelvin at the start. */
    public CoilParameters withStartRise(double kelvin) {
        return new CoilParameters(
                ohmsAt20Celsius, seriesOhms, forceShare, henry, kelvinPerWatt, warmingSeconds, kelvin);
    }

    /** Winding resistance at a temperature, {@code R20 (1 + 0.00393 (T - 20 °C))}. */
    public double windingOhms(double kelvin) {
        return ohmsAt20Celsius * (1 + COPPER_PER_KELVIN * (kelvin - HydraulicStand.REFERENCE_KELVIN));
    }
}
