package org.pumpwright.host.plant;

/**
 * A unit and the stand around it: everything the model needs except randomness. Thread-safe.
 *
 * @param motor the motor
 * @param head the pump head
 * @param thermal how the motor warms
 * @param stand supply, lead, nozzle and line
 * @param meter the stand's flow meter
 */
public record PumpParameters(
        MotorParameters motor,
        HeadParameters head,
        ThermalParameters thermal,
        StandParameters stand,
        MeterParameters meter) {

    /**
     * A 12 V, 5 gal/min diaphragm pump in good order on a stand in good order. Assumed starting values from memory, not
     * any maker's specification; to be replaced by measured known-good units.
     */
    public static PumpParameters healthy() {
        return new PumpParameters(
                MotorParameters.healthy(),
                HeadParameters.healthy(),
                ThermalParameters.healthy(),
                StandParameters.inOrder(),
                MeterParameters.healthy());
    }

    /** The same with another motor. */
    public PumpParameters withMotor(MotorParameters other) {
        return new PumpParameters(other, head, thermal, stand, meter);
    }

    /** The same with another head. */
    public PumpParameters withHead(HeadParameters other) {
        return new PumpParameters(motor, other, thermal, stand, meter);
    }

    /** The same with other heat capacities and resistances. */
    public PumpParameters withThermal(ThermalParameters other) {
        return new PumpParameters(motor, head, other, stand, meter);
    }

    /** The same unit on another stand. */
    public PumpParameters withStand(StandParameters other) {
        return new PumpParameters(motor, head, thermal, other, meter);
    }

    /** The same with another meter. */
    public PumpParameters withMeter(MeterParameters other) {
        return new PumpParameters(motor, head, thermal, stand, other);
    }
}
