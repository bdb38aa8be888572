package org.pumpwright.host.report;

import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.quantity.Volume;

/**
 * How the values of a unit are shown. Thread-safe.
 *
 * @param words the unit on papers
 * @param factor what a value of the SI unit is multiplied by
 * @param decimals places that are shown where nothing else tells how many are worth showing
 */
record ShownUnit(String words, double factor, int decimals) {
    private static final double M3_PER_LITRE = 1e-3;
    private static final double FLOW_US = new FlowRate(1).gallonsPerMinute();
    private static final double FLOW_METRIC = new FlowRate(1).litresPerMinute();

    static ShownUnit of(FindingUnit unit, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        return switch (unit) {
            case SHARE -> new ShownUnit("%", 100, 1);
            case SECONDS -> new ShownUnit("s", 1, 1);
            case VOLTS -> new ShownUnit("V", 1, 2);
            case AMPS -> new ShownUnit("A", 1, 2);
            case OHMS -> new ShownUnit("Ω", 1, 3);
            case PASCALS -> us ? new ShownUnit("psi", 1 / Pressure.PASCALS_PER_PSI, 1) : new ShownUnit("kPa", 1e-3, 1);
            case CELSIUS -> new ShownUnit("°C", 1, 1);
            case HERTZ -> new ShownUnit("Hz", 1, 2);
            case M3_PER_SECOND -> us ? new ShownUnit("gal/min", FLOW_US, 2) : new ShownUnit("L/min", FLOW_METRIC, 2);
            case PULSES_PER_M3 ->
                us
                        ? new ShownUnit("pulses/gal", Volume.M3_PER_US_GALLON, 1)
                        : new ShownUnit("pulses/L", M3_PER_LITRE, 2);
            case NUMBER -> new ShownUnit("", 1, 3);
            case M3_PER_SECOND_PER_VOLT ->
                us ? new ShownUnit("gal/min per V", FLOW_US, 4) : new ShownUnit("L/min per V", FLOW_METRIC, 3);
            case AMPS_PER_PASCAL ->
                us ? new ShownUnit("A per psi", Pressure.PASCALS_PER_PSI, 3) : new ShownUnit("A per kPa", 1e3, 4);
            case M3_PER_SECOND_PER_PASCAL ->
                us
                        ? new ShownUnit("gal/min per psi", FLOW_US * Pressure.PASCALS_PER_PSI, 5)
                        : new ShownUnit("L/min per kPa", FLOW_METRIC * 1e3, 5);
        };
    }
}
