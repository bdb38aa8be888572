package org.pumpwright.host.plant;

/** What current the motor takes at each speed from a pulse-width modulated drive, one period at a time. Thread-safe. */
sealed interface Drive permits AveragedDrive, PulsedDrive {

    /** The current at a speed held through the period. */
    MotorCurrent at(double speedRadPerSecond);

    /**
     * The speed at which the motor carries a constant torque and its viscous share; 0 when it cannot.
     *
     * @param torque in N·m, without the viscous share
     */
    double speedAgainst(double torque);

    /** The drive of a curve's duty, of the kind that its switching frequency asks for. */
    static Drive of(DriveCircuit circuit, double hertz) {
        return Double.isInfinite(hertz) || circuit.duty() >= 1 || circuit.duty() <= 0
                ? new AveragedDrive(circuit)
                : new PulsedDrive(circuit, hertz);
    }
}
