package org.pumpwright.host.plant.hydraulic;

import static org.pumpwright.host.plant.UsUnits.GALLON_M3;
import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;

import org.pumpwright.host.plant.MeterParameters;
import org.pumpwright.host.plant.UsUnits;

/**
 * A hydraulic metering pump and the stand around it: everything the model needs except randomness. Thread-safe.
 *
 * @param coil the valve's coil
 * @param spool the valve
 * @param motor the oil motor
 * @param head the product pump
 * @param oil the oil supply
 * @param stand supply, nozzle and line
 * @param meter the stand's large meter
 */
public record HydraulicParameters(
        CoilParameters coil,
        SpoolParameters spool,
        OilMotorParameters motor,
        ProductHead head,
        OilSupply oil,
        HydraulicStand stand,
        MeterParameters meter) {

    private static final double TURN = 2 * Math.PI;
    private static final double FREE_OF_RELIEF_PASCAL = 2000 * UsUnits.PSI;

    /** A 30 gal/min pump with a positive-displacement head. Assumed starting values, not any maker's. */
    public static HydraulicParameters healthy() {
        return new HydraulicParameters(
                CoilParameters.healthy(),
                SpoolParameters.healthy(),
                new OilMotorParameters(80e-6 / TURN, 8e-12, 0.88, 3, FREE_OF_RELIEF_PASCAL, true),
                DisplacementHead.healthy(),
                OilSupply.inOrder(),
                HydraulicStand.inOrder(),
                largeMeter());
    }

    /** A pump of the same class with a centrifugal head on a small, fast oil motor. Assumed values. */
    public static HydraulicParameters centrifugal() {
        OilMotorParameters fast = new OilMotorParameters(11e-6 / TURN, 8e-12, 0.88, 0.3, FREE_OF_RELIEF_PASCAL, true);
        return healthy().withMotor(fast).withHead(CentrifugalHead.healthy());
    }

    /** The same with another coil. */
    public HydraulicParameters withCoil(CoilParameters other) {
        return new HydraulicParameters(other, spool, motor, head, oil, stand, meter);
    }

    /** The same with another valve. */
    public HydraulicParameters withSpool(SpoolParameters other) {
        return new HydraulicParameters(coil, other, motor, head, oil, stand, meter);
    }

    /** The same with another oil motor. */
    public HydraulicParameters withMotor(OilMotorParameters other) {
        return new HydraulicParameters(coil, spool, other, head, oil, stand, meter);
    }

    /** The same with another product head. */
    public HydraulicParameters withHead(ProductHead other) {
        return new HydraulicParameters(coil, spool, motor, other, oil, stand, meter);
    }

    /** The same with another oil supply. */
    public HydraulicParameters withOil(OilSupply other) {
        return new HydraulicParameters(coil, spool, motor, head, other, stand, meter);
    }

    /** The same unit on another stand. */
    public HydraulicParameters withStand(HydraulicStand other) {
        return new HydraulicParameters(coil, spool, motor, head, oil, other, meter);
    }

    /** A rotor meter of nominal 600 pulses per US gallon at 15 gal/min; assumed values. */
    private static MeterParameters largeMeter() {
        double lag = 0.05 * GALLON_PER_MINUTE;
        double limit = 600 / GALLON_M3 / (1 - lag / (15 * GALLON_PER_MINUTE));
        return new MeterParameters(limit, lag, 0.4 * GALLON_PER_MINUTE, 6, 0.02, 0.015, 1e-4);
    }
}
