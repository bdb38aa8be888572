package org.pumpwright.host.plant.driver;

import org.pumpwright.host.plant.Range;

/**
 * The module's switch and what surrounds it. Assumed values. Thread-safe.
 *
 * @param onOhms switch with its connectors
 * @param groundOhms the module's ground pin
 * @param freewheel whether the load's current has a way back while the switch is off
 * @param freewheelVolts drop of that way
 * @param clampVolts voltage against the load at which a switch without that way clamps
 * @param leakageAmps current through the switch that is off
 * @param stuckOn whether the switch is shorted
 * @param open whether nothing connects the switch with the output
 */
public record OutputStage(
        double onOhms,
        double groundOhms,
        boolean freewheel,
        double freewheelVolts,
        double clampVolts,
        double leakageAmps,
        boolean stuckOn,
        boolean open) {

    public OutputStage {
        Range.check("on-resistance", onOhms, 1e-4, 100, "ohm");
        Range.check("ground resistance", groundOhms, 0, 100, "ohm");
        Range.check("freewheel drop", freewheelVolts, 0, 5, "V");
        Range.check("clamp", clampVolts, 1, 1000, "V");
        Range.check("leakage", leakageAmps, 0, 100, "A");
    }

    static OutputStage healthy() {
        return new OutputStage(0.015, 0.001, true, 0.7, 40, 0.0005, false, false);
    }

    OutputStage withOnOhms(double ohms) {
        return new OutputStage(ohms, groundOhms, freewheel, freewheelVolts, clampVolts, leakageAmps, stuckOn, open);
    }

    OutputStage withGroundOhms(double ohms) {
        return new OutputStage(onOhms, ohms, freewheel, freewheelVolts, clampVolts, leakageAmps, stuckOn, open);
    }

    OutputStage withoutFreewheel() {
        return new OutputStage(onOhms, groundOhms, false, freewheelVolts, clampVolts, leakageAmps, stuckOn, open);
    }

    OutputStage withLeakage(double amps) {
        return new OutputStage(onOhms, groundOhms, freewheel, freewheelVolts, clampVolts, amps, stuckOn, open);
    }

    OutputStage withSwitch(boolean shorted, boolean cut) {
        return new OutputStage(onOhms, groundOhms, freewheel, freewheelVolts, clampVolts, leakageAmps, shorted, cut);
    }

    /** Voltage that drives the load's current down while the switch is off. */
    double backVolts() {
        return freewheel ? freewheelVolts : clampVolts;
    }
}
