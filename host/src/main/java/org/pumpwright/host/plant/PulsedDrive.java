package org.pumpwright.host.plant;

/**
 * A drive slow enough for the current to rise and fall, and to stop, within its period. The rotor's inertia holds the
 * speed, so that each part of the period is an exponential of the R-L circuit and the period closes in itself:
 *
 * <pre>
 * on    L di/dt = V - V_b - k w - (R + R_feed) i
 * off   L di/dt = -V_f - V_b - k w - R i        until i = 0
 * </pre>
 *
 * Integrated over each part, {@code L (i_end - i_begin) = volts * time - ohms * charge} gives the charge, and the same
 * times the current its square. Textbook circuit theory. Thread-safe.
 */
final class PulsedDrive implements Drive {

    private static final int MOST_ROUNDS = 60;

    /** In N·m: a billionth of what the pump needs. */
    private static final double TORQUE_ACCURACY = 1e-10;

    private final DriveCircuit c;
    private final double period;
    private final double onSeconds;
    private final double onOhms;
    private final double onKept;
    private final double offKept;

    PulsedDrive(DriveCircuit circuit, double hertz) {
        c = circuit;
        period = 1 / hertz;
        onSeconds = c.duty() * period;
        onOhms = c.armatureOhms() + c.feed().ohms();
        onKept = StrictMath.exp(-onSeconds * onOhms / c.inductanceHenry());
        offKept = StrictMath.exp(-(period - onSeconds) * c.armatureOhms() / c.inductanceHenry());
    }

    @Override
    public MotorCurrent at(double speed) {
        double onVolts = c.feed().openVolts() - c.brushVolts() - c.torqueConstant() * speed;
        if (onVolts <= 0) {
            return MotorCurrent.NONE;
        }
        double offVolts = c.freewheelVolts() + c.brushVolts() + c.torqueConstant() * speed;
        double upTo = onVolts / onOhms;
        double downTo = -offVolts / c.armatureOhms();
        double low = Math.max(0, (downTo * (1 - offKept) + upTo * (1 - onKept) * offKept) / (1 - onKept * offKept));
        double high = upTo + (low - upTo) * onKept;
        double offSeconds = low > 0 ? period - onSeconds : secondsToZero(high, downTo);
        return within(low, high, offSeconds, onVolts, offVolts);
    }

    @Override
    public double speedAgainst(double torque) {
        if (left(0, torque) <= 0) {
            return 0;
        }
        double slow = 0;
        double slowLeft = left(slow, torque);
        double fast = (c.feed().openVolts() - c.brushVolts()) / c.torqueConstant();
        double fastLeft = left(fast, torque);
        double speed = fast;
        for (int i = 0; i < MOST_ROUNDS; i++) {
            speed = slow + (fast - slow) * slowLeft / (slowLeft - fastLeft);
            double speedLeft = left(speed, torque);
            if (Math.abs(speedLeft) < TORQUE_ACCURACY) {
                break;
            }
            // The end that stays is made to count half (the Illinois rule), or a bent curve would hold it fast.
            if (speedLeft > 0) {
                slow = speed;
                slowLeft = speedLeft;
                fastLeft /= 2;
            } else {
                fast = speed;
                fastLeft = speedLeft;
                slowLeft /= 2;
            }
        }
        return speed;
    }

    private double left(double speed, double torque) {
        return c.torqueAt(speed, at(speed).motorAmps()) - torque;
    }

    private double secondsToZero(double from, double downTo) {
        return c.inductanceHenry() / c.armatureOhms() * StrictMath.log((from - downTo) / -downTo);
    }

    private MotorCurrent within(double low, double high, double offSeconds, double onVolts, double offVolts) {
        double henry = c.inductanceHenry();
        double onCharge = (onVolts * onSeconds - henry * (high - low)) / onOhms;
        double offCharge = (henry * (high - low) - offVolts * offSeconds) / c.armatureOhms();
        double stored = henry * (high * high - low * low) / 2;
        double onSquare = (onVolts * onCharge - stored) / onOhms;
        double offSquare = (stored - offVolts * offCharge) / c.armatureOhms();
        MotorCurrent free = new MotorCurrent(
                (onCharge + offCharge) / period, onCharge / period, (onSquare + offSquare) / period, high);
        double most = c.duty() * c.feed().limitAmps();
        return free.supplyAmps() > most ? free.times(most / free.supplyAmps()) : free;
    }
}
