package org.pumpwright.benchmarks.judgement;

import java.util.List;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpSteadyState;

/**
 * A judged quantity at a set point. Thread-safe.
 *
 * @param flow true for flow, false for motor current
 * @param duty 0..1
 */
record Feature(boolean flow, double duty) {
    /** What the shipped quick plan judges. */
    static final List<Feature> JUDGED = List.of(
            new Feature(true, 0.3),
            new Feature(false, 0.3),
            new Feature(true, 0.5),
            new Feature(false, 0.5),
            new Feature(true, 1),
            new Feature(false, 1));

    /**
     * The feature of a unit as it truly is.
     *
     * @param volts effective volts
     * @param value flow in m3/s, or supply current over duty in A
     */
    record True(double volts, double value) {}

    /** Without any sensor, from the equations of the steady state. */
    True trueOf(PumpParameters unit, double kelvin) {
        return trueOf(PumpSteadyState.of(unit, duty, kelvin));
    }

    True trueOf(PumpSteadyState state) {
        double volts = duty * state.terminalVolts() - (1 - duty) * TestStand.FREEWHEEL_VOLTS;
        return new True(volts, flow ? state.flowM3PerSecond() : state.batteryAmps() / duty);
    }

    Band limits(HealthyCurve curve, double volts) {
        return flow ? curve.flow(volts) : curve.motorAmps(volts);
    }

    String words() {
        return (flow ? "flow" : "amps") + " at " + Math.round(100 * duty) + " %";
    }
}
