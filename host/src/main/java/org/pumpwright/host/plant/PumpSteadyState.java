package org.pumpwright.host.plant;

import static org.pumpwright.host.plant.UsUnits.ZERO_CELSIUS_KELVIN;

/**
 * The pump at rest with itself: duty held until nothing changes any more but temperature. Solves the equations of
 * docs/metrology/plant.md, with the unit supple and run in: diaphragms thawed, lead cold, hoses without air, circuit
 * closed. Thread-safe.
 *
 * @param duty drive duty 0..1
 * @param flowM3PerSecond flow through the nozzle, which the meter sees; at an imposed pressure, flow out of the head
 * @param pressurePa gauge pressure in front of the nozzle
 * @param speedRadPerSecond shaft speed
 * @param motorAmps mean motor current
 * @param motorPeakAmps highest motor current within the drive's period
 * @param batteryAmps mean current in the supply lead
 * @param terminalVolts supply voltage at the unit's pins, mean over the drive's whole period (in front of its switch)
 */
public record PumpSteadyState(
        double duty,
        double flowM3PerSecond,
        double pressurePa,
        double speedRadPerSecond,
        double motorAmps,
        double motorPeakAmps,
        double batteryAmps,
        double terminalVolts) {

    private static final double START_ACCURACY = 1e-9;
    private static final double COLD_KELVIN = ZERO_CELSIUS_KELVIN + 20;

    /** The unit on its stand, started from rest with the winding at 20 °C and what it came warmer than that. */
    public static PumpSteadyState of(PumpParameters p, double duty) {
        return of(p, duty, COLD_KELVIN + p.arrival().warmerKelvin());
    }

    /**
     * The unit on its stand, started from rest with the winding at a temperature.
     *
     * @throws IllegalArgumentException when the duty is outside 0..1
     */
    public static PumpSteadyState of(PumpParameters p, double duty, double windingKelvin) {
        OperatingCurve curve = curve(p, duty, windingKelvin);
        double pressure = curve.breaksAway(0) ? curve.balancePressure() : 0;
        OperatingPoint point = pressure > 0 ? curve.turningAt(pressure) : new OperatingPoint(0, 0, curve.standstill());
        double flow = p.stand().nozzleM3PerSecondRootPascal() * p.physics().outflow(pressure);
        return state(curve, duty, pressure, point, flow);
    }

    /** The running unit with a pressure held at its outlet, winding at 20 °C. Flow is negative beyond dead-head. */
    public static PumpSteadyState atPressure(PumpParameters p, double duty, double pressurePa) {
        Range.check("pressure", pressurePa, 0, 1e8, "Pa");
        OperatingCurve curve = curve(p, duty, COLD_KELVIN);
        OperatingPoint point = curve.turningAt(pressurePa);
        return state(curve, duty, pressurePa, point, point.flowM3PerSecond());
    }

    /** The unit against a closed outlet, winding at 20 °C. An open recirculation valve stays open. */
    public static PumpSteadyState deadHead(PumpParameters p, double duty) {
        StandParameters closed = p.stand().withOutlet(0, p.stand().recirculationM3PerSecondRootPascal());
        return of(p.withStand(closed), duty);
    }

    /**
     * Lowest duty at which the standing unit begins to turn, at 20 °C and what it came warmer than that; exact to a
     * billionth. Infinite when it does not start at any duty.
     */
    public static double startDuty(PumpParameters p) {
        double kelvin = COLD_KELVIN + p.arrival().warmerKelvin();
        double standing = 0;
        double starting = 1;
        if (!curve(p, starting, kelvin).breaksAway(0)) {
            return Double.POSITIVE_INFINITY;
        }
        while (starting - standing > START_ACCURACY) {
            double middle = (standing + starting) / 2;
            if (curve(p, middle, kelvin).breaksAway(0)) {
                starting = middle;
            } else {
                standing = middle;
            }
        }
        return starting;
    }

    private static OperatingCurve curve(PumpParameters p, double duty, double windingKelvin) {
        Range.check("duty", duty, 0, 1, "");
        return new OperatingCurve(p, duty, windingKelvin, p.motor().contactOhms());
    }

    private static PumpSteadyState state(
            OperatingCurve curve, double duty, double pressure, OperatingPoint point, double flow) {
        return new PumpSteadyState(
                duty,
                flow,
                pressure,
                point.speedRadPerSecond(),
                point.motorAmps(),
                point.current().peakAmps(),
                curve.leadAmps(point),
                curve.terminalVolts(point));
    }
}
