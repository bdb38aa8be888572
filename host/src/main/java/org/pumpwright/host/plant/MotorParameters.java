package org.pumpwright.host.plant;

/**
 * The brushed permanent-magnet motor and its friction. Resistance and torque constant are those at 20 °C. In SI the
 * torque constant (N·m/A) equals the back-EMF constant (V·s/rad): a textbook identity of the ideal motor. Thread-safe.
 *
 * @param resistanceOhms armature with healthy brushes
 * @param brushVolts current-independent drop of the brush pair
 * @param torqueConstant newton metre per ampere, equal to volt second per radian
 * @param runningFrictionNewtonMetre torque lost at any speed
 * @param breakawayNewtonMetre torque needed to begin turning
 * @param viscousNewtonMetreSecond torque lost per rad/s, iron loss included
 * @param contactOhms resistance added by worn brushes or a bad commutator, mean over a turn
 * @param contactSwing how much of {@code contactOhms} comes and goes with the shaft's position, 0..1
 * @param dropoutsPerMinute how often the contact opens for a moment
 */
public record MotorParameters(
        double resistanceOhms,
        double brushVolts,
        double torqueConstant,
        double runningFrictionNewtonMetre,
        double breakawayNewtonMetre,
        double viscousNewtonMetreSecond,
        double contactOhms,
        double contactSwing,
        double dropoutsPerMinute) {

    public MotorParameters {
        Range.check("armature resistance", resistanceOhms, 1e-3, 1e3, "ohm");
        Range.check("brush drop", brushVolts, 0, 5, "V");
        Range.check("torque constant", torqueConstant, 1e-4, 10, "N·m/A");
        Range.check("running friction", runningFrictionNewtonMetre, 0, 100, "N·m");
        Range.check("breakaway torque", breakawayNewtonMetre, 0, 1e6, "N·m");
        Range.check("viscous friction", viscousNewtonMetreSecond, 1e-12, 1, "N·m·s");
        Range.check("contact resistance", contactOhms, 0, 1e12, "ohm");
        Range.check("contact swing", contactSwing, 0, 1, "");
        Range.check("contact drop-outs", dropoutsPerMinute, 0, 1000, "per min");
    }

    /** Starting values from memory for a 12 V motor on a 5 gal/min pump; no maker's specification. */
    static MotorParameters healthy() {
        return new MotorParameters(0.19, 0.8, 0.039, 0.085, 0.17, 1.6e-4, 0, 0, 0);
    }

    /** The same motor with its windings changed. */
    public MotorParameters withWinding(double ohms, double newTorqueConstant) {
        return new MotorParameters(
                ohms,
                brushVolts,
                newTorqueConstant,
                runningFrictionNewtonMetre,
                breakawayNewtonMetre,
                viscousNewtonMetreSecond,
                contactOhms,
                contactSwing,
                dropoutsPerMinute);
    }

    /** The same motor with other running and breakaway torques, in N·m. */
    public MotorParameters withFriction(double running, double breakaway) {
        return new MotorParameters(
                resistanceOhms,
                brushVolts,
                torqueConstant,
                running,
                breakaway,
                viscousNewtonMetreSecond,
                contactOhms,
                contactSwing,
                dropoutsPerMinute);
    }

    /** The same motor with a worse brush contact: added ohms, share swinging with position, drop-outs a minute. */
    public MotorParameters withContact(double ohms, double swing, double dropouts) {
        return new MotorParameters(
                resistanceOhms,
                brushVolts,
                torqueConstant,
                runningFrictionNewtonMetre,
                breakawayNewtonMetre,
                viscousNewtonMetreSecond,
                ohms,
                swing,
                dropouts);
    }
}
