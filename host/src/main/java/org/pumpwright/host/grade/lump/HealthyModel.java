package org.pumpwright.host.grade.lump;

import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * What is known of the model of unit beforehand. The lumps only say where the fit begins; the other three cannot be told from
 * a sweep and enter with their spread from unit to unit. Thread-safe.
 *
 * @param flowPerVolt m3/s/V, above 0
 * @param noLoadAmps A, above 0
 * @param ampsPerPressure A/Pa, above 0
 * @param ohms ohm, above 0
 * @param slip m3/s/Pa, above 0
 * @param viscousAmpsPerVolt current that viscous friction and iron take a volt of back-EMF, {@code B / k^2}, A/V
 * @param brushVolts drop of the brush pair, V
 * @param compliance share of the net stroke lost a pascal, {@code c D / (D - q_b)}, 1/Pa
 */
public record HealthyModel(
        double flowPerVolt,
        double noLoadAmps,
        double ampsPerPressure,
        double ohms,
        double slip,
        Uncertain viscousAmpsPerVolt,
        Uncertain brushVolts,
        Uncertain compliance) {
    public HealthyModel {
        Require.inRange("healthy flow per volt", flowPerVolt, 1e-9, 1, "m3/s/V");
        Require.inRange("healthy no-load amps", noLoadAmps, 1e-3, 1e3, "A");
        Require.inRange("healthy amps per pressure", ampsPerPressure, 1e-9, 1, "A/Pa");
        Require.inRange("healthy ohms", ohms, 1e-3, 1e3, "ohm");
        Require.inRange("healthy slip", slip, 1e-15, 1, "m3/s/Pa");
    }

    /**
     * A 12 V pump of about 5 gal/min. Assumed starting values from memory, the same as those of the simulated unit, no
     * maker's specification. Spreads: B 15 % and k 3 % make 16 %; brushes 8 %; c 15 %.
     */
    public static HealthyModel twelveVoltPump() {
        return new HealthyModel(
                2.836e-5,
                2.18,
                3.194e-5,
                0.19,
                8e-12,
                Uncertain.of(0.1052, 0.0170),
                Uncertain.of(0.8, 0.064),
                Uncertain.of(2.9e-7, 0.44e-7));
    }
}
