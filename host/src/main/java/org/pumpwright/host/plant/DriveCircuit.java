package org.pumpwright.host.plant;

/**
 * The electrical values a drive works with, at one duty and temperature. Thread-safe.
 *
 * @param duty share of the period in which the switch conducts
 * @param feed supply and lead
 * @param armatureOhms winding, brushes and what their contact adds
 * @param brushVolts drop of the brush pair
 * @param freewheelVolts drop of the diode that carries the current while the switch is off
 * @param torqueConstant N·m/A, equal to V·s/rad
 * @param viscousNewtonMetreSecond torque lost per rad/s
 * @param inductanceHenry of the armature
 */
record DriveCircuit(
        double duty,
        Feed feed,
        double armatureOhms,
        double brushVolts,
        double freewheelVolts,
        double torqueConstant,
        double viscousNewtonMetreSecond,
        double inductanceHenry) {

    /** Torque that the current leaves for the load at a speed. */
    double torqueAt(double speed, double motorAmps) {
        return torqueConstant * motorAmps - viscousNewtonMetreSecond * speed;
    }
}
