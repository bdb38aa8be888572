package org.pumpwright.host.plant;

import java.util.Random;

/**
 * Added resistance of a bad brush contact: it swings once per turn with the shaft's position, and a loose contact opens
 * for a moment now and then. Confined to the plant's thread.
 */
final class BrushContact {

    private static final double TURN = 2 * Math.PI;

    private final MotorParameters motor;
    private final Telegraph looseness;
    private double angle;

    BrushContact(MotorParameters motor, Random random) {
        this.motor = motor;
        angle = TURN * random.nextDouble();
        looseness = new Telegraph(motor.dropoutsPerMinute(), random);
    }

    /** Ohms to add at the position where the shaft stands. */
    double standingOhms() {
        return looseness.open() ? UnitCircuit.OPEN_OHMS : motor.contactOhms() * (1 + swing());
    }

    /** Ohms to add over whole turns. */
    double turningOhms() {
        return looseness.open() ? UnitCircuit.OPEN_OHMS : motor.contactOhms();
    }

    /**
     * By what factor the turning motor's current is off its mean at the present position. The rotor's inertia holds the
     * speed within a turn, so the current varies as {@code 1 / (1 + a cos angle)}, whose mean over a turn is
     * {@code 1 / sqrt(1 - a^2)}.
     *
     * @param otherOhms resistance of the loop without this contact
     */
    double ripple(double otherOhms) {
        if (looseness.open() || motor.contactSwing() == 0) {
            return 1;
        }
        double share = motor.contactOhms() / (motor.contactOhms() + otherOhms);
        double most = share * motor.contactSwing();
        return Math.sqrt(1 - most * most) / (1 + share * swing());
    }

    /** Lets time pass with the shaft turning. */
    void advance(double seconds, double speedRadPerSecond) {
        angle = (angle + speedRadPerSecond * seconds) % TURN;
        looseness.advance(seconds, 1);
    }

    private double swing() {
        return motor.contactSwing() == 0 ? 0 : motor.contactSwing() * StrictMath.cos(angle);
    }
}
