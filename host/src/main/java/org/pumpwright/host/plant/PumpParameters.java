package org.pumpwright.host.plant;

/**
 * A unit and the stand around it: everything the model needs except randomness. Thread-safe.
 *
 * @param motor the motor
 * @param head the pump head
 * @param thermal how the motor warms
 * @param dynamics what shows within a turn
 * @param circuit what can open the unit's circuit
 * @param arrival in what state the unit comes
 * @param stand supply, drive, lead, nozzle and hoses
 * @param meter the stand's flow meter
 * @param physics the laws that unit and nozzle obey
 */
public record PumpParameters(
        MotorParameters motor,
        HeadParameters head,
        ThermalParameters thermal,
        DynamicsParameters dynamics,
        CircuitParameters circuit,
        ArrivalParameters arrival,
        StandParameters stand,
        MeterParameters meter,
        PumpPhysics physics) {

    /** A unit and a stand that obey the plain laws. */
    public PumpParameters(
            MotorParameters motor,
            HeadParameters head,
            ThermalParameters thermal,
            DynamicsParameters dynamics,
            CircuitParameters circuit,
            ArrivalParameters arrival,
            StandParameters stand,
            MeterParameters meter) {
        this(motor, head, thermal, dynamics, circuit, arrival, stand, meter, PumpPhysics.PLAIN);
    }

    /**
     * A 12 V, 5 gal/min diaphragm pump in good order on a stand in good order. Assumed starting values from memory, not
     * any maker's specification; to be replaced by measured known-good units.
     */
    public static PumpParameters healthy() {
        return new PumpParameters(
                MotorParameters.healthy(),
                HeadParameters.healthy(),
                ThermalParameters.healthy(),
                DynamicsParameters.healthy(),
                CircuitParameters.healthy(),
                ArrivalParameters.healthy(),
                StandParameters.inOrder(),
                MeterParameters.healthy());
    }

    /** The same with another motor. */
    public PumpParameters withMotor(MotorParameters other) {
        return new PumpParameters(other, head, thermal, dynamics, circuit, arrival, stand, meter, physics);
    }

    /** The same with another head. */
    public PumpParameters withHead(HeadParameters other) {
        return new PumpParameters(motor, other, thermal, dynamics, circuit, arrival, stand, meter, physics);
    }

    /** The same with other heat capacities and resistances. */
    public PumpParameters withThermal(ThermalParameters other) {
        return new PumpParameters(motor, head, other, dynamics, circuit, arrival, stand, meter, physics);
    }

    /** The same with another inductance, inertia or inequality of the chambers. */
    public PumpParameters withDynamics(DynamicsParameters other) {
        return new PumpParameters(motor, head, thermal, other, circuit, arrival, stand, meter, physics);
    }

    /** The same with another protector, pressure switch, loose contact or leak to the case. */
    public PumpParameters withCircuit(CircuitParameters other) {
        return new PumpParameters(motor, head, thermal, dynamics, other, arrival, stand, meter, physics);
    }

    /** The same unit, come in another state. */
    public PumpParameters withArrival(ArrivalParameters other) {
        return new PumpParameters(motor, head, thermal, dynamics, circuit, other, stand, meter, physics);
    }

    /** The same unit on another stand. */
    public PumpParameters withStand(StandParameters other) {
        return new PumpParameters(motor, head, thermal, dynamics, circuit, arrival, other, meter, physics);
    }

    /** The same with another meter. */
    public PumpParameters withMeter(MeterParameters other) {
        return new PumpParameters(motor, head, thermal, dynamics, circuit, arrival, stand, other, physics);
    }

    /** The same under other laws. */
    public PumpParameters withPhysics(PumpPhysics other) {
        return new PumpParameters(motor, head, thermal, dynamics, circuit, arrival, stand, meter, other);
    }
}
