package org.pumpwright.host.plant.hydraulic;

import org.pumpwright.host.plant.Range;

/**
 * The pump when nothing changes any more but temperature. Thread-safe.
 *
 * @param duty duty of the valve drive
 * @param coilAmps mean current in the coil
 * @param opening relative opening of the valve, 0..1
 * @param oilM3PerSecond oil that the valve passes
 * @param motorDropPa pressure drop over the oil motor
 * @param supplyPa pressure of the oil supply
 * @param caseDrainM3PerSecond oil past the motor
 * @param speedRadPerSecond shaft speed
 * @param flowM3PerSecond product flow through the nozzle
 * @param pressurePa product pressure in front of the nozzle
 */
public record HydraulicSteadyState(
        double duty,
        double coilAmps,
        double opening,
        double oilM3PerSecond,
        double motorDropPa,
        double supplyPa,
        double caseDrainM3PerSecond,
        double speedRadPerSecond,
        double flowM3PerSecond,
        double pressurePa) {

    /** The unit with its coil at its start temperature, oil on, override backed out. */
    public static HydraulicSteadyState of(HydraulicParameters p, double duty, Direction direction) {
        return of(p, duty, direction, 0);
    }

    /**
     * The unit with its coil at its start temperature, oil on, the override turned in.
     *
     * @param override 0 backed out to 1 turned in fully
     * @throws IllegalArgumentException when duty or override is outside 0..1
     */
    public static HydraulicSteadyState of(HydraulicParameters p, double duty, Direction direction, double override) {
        Range.check("duty", duty, 0, 1, "");
        Range.check("override", override, 0, 1, "");
        double kelvin = p.stand().ambientKelvin() + p.coil().startRiseKelvin();
        double ohms = p.coil().windingOhms(kelvin) + p.coil().seriesOhms();
        double amps = p.stand().coilAmps(duty, ohms);
        double width = p.spool().hysteresisAmps(p.stand().dither());
        double held = amps * p.coil().forceShare() + direction.ofWidth * width;
        double opening = p.spool().held(Math.max(p.spool().opening(held), override));
        OilState s = new OilCircuit(p, p.stand().nozzleM3PerSecondRootPascal(), opening).balance();
        return new HydraulicSteadyState(
                duty,
                amps,
                opening,
                s.oilM3PerSecond(),
                s.motorDropPa(),
                s.supplyPa(),
                p.motor().leakM3PerSecondPascal() * s.motorDropPa(),
                s.speedRadPerSecond(),
                s.load().flowM3PerSecond(),
                s.load().pressurePa());
    }
}
