package org.pumpwright.host.plant;

import java.util.Random;

/**
 * Added resistance of a bad brush contact: it swings once per turn with the shaft's position, and a loose contact opens
 * for a moment now and then (a random telegraph: exponential time between openings, openings of 0.05 to 2 s, short ones
 * as common per decade as long ones). Confined to the plant's thread.
 */
final class BrushContact {

    private static final double SHORTEST_OPEN_SECONDS = 0.05;
    private static final double LONGEST_OPEN_SECONDS = 2;
    private static final double OPEN_OHMS = 1e9;
    private static final double TURN = 2 * Math.PI;

    private final MotorParameters motor;
    private final Random random;
    private double angle;
    private boolean open;
    private double secondsToChange;

    BrushContact(MotorParameters motor, Random random) {
        this.motor = motor;
        this.random = random;
        angle = TURN * random.nextDouble();
        secondsToChange = nextClosedSeconds();
    }

    /** Ohms to add at the position where the shaft stands. */
    double standingOhms() {
        return open ? OPEN_OHMS : motor.contactOhms() * (1 + swing());
    }

    /** Ohms to add over whole turns. */
    double turningOhms() {
        return open ? OPEN_OHMS : motor.contactOhms();
    }

    /**
     * By what factor the turning motor's current is off its mean at the present position. The rotor's inertia holds the
     * speed within a turn, so the current varies as {@code 1 / (1 + a cos angle)}, whose mean over a turn is
     * {@code 1 / sqrt(1 - a^2)}.
     *
     * @param otherOhms resistance of the loop without this contact
     */
    double ripple(double otherOhms) {
        if (open || motor.contactSwing() == 0) {
            return 1;
        }
        double share = motor.contactOhms() / (motor.contactOhms() + otherOhms);
        double most = share * motor.contactSwing();
        return Math.sqrt(1 - most * most) / (1 + share * swing());
    }

    /** Lets time pass with the shaft turning. */
    void advance(double seconds, double speedRadPerSecond) {
        angle = (angle + speedRadPerSecond * seconds) % TURN;
        secondsToChange -= seconds;
        if (secondsToChange <= 0) {
            open = !open;
            secondsToChange = open ? nextOpenSeconds() : nextClosedSeconds();
        }
    }

    private double swing() {
        return motor.contactSwing() == 0 ? 0 : motor.contactSwing() * StrictMath.cos(angle);
    }

    private double nextClosedSeconds() {
        if (motor.dropoutsPerMinute() == 0) {
            return Double.POSITIVE_INFINITY;
        }
        return -StrictMath.log(1 - random.nextDouble()) * 60 / motor.dropoutsPerMinute();
    }

    private double nextOpenSeconds() {
        double decades = StrictMath.log(LONGEST_OPEN_SECONDS / SHORTEST_OPEN_SECONDS);
        return SHORTEST_OPEN_SECONDS * StrictMath.exp(decades * random.nextDouble());
    }
}
