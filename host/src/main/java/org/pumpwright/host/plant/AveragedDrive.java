package org.pumpwright.host.plant;

/**
 * The drive averaged over its period, which holds while the current never stops flowing: {@code d V - (1-d) V_f - V_b =
 * I R + k w}, the textbook brushed motor on its mean voltage. Thread-safe.
 */
final class AveragedDrive implements Drive {

    private final DriveCircuit c;
    private final double loopOhms;
    private final double effectiveVolts;
    /** The same with the supply at its limit and a leak past the motor taking part of it. */
    private final double limitedLoopOhms;

    private final double limitedVolts;

    AveragedDrive(DriveCircuit circuit) {
        c = circuit;
        double lost = (1 - c.duty()) * c.freewheelVolts() + c.brushVolts();
        loopOhms = c.armatureOhms() + c.duty() * c.feed().ohms();
        effectiveVolts = c.duty() * c.feed().openVolts() - lost;
        boolean leaks = c.feed().leaks() && c.duty() > 0;
        limitedLoopOhms = leaks ? c.armatureOhms() + c.duty() * c.feed().leakOhms() : 0;
        limitedVolts = leaks ? c.duty() * c.feed().limitAmps() * c.feed().leakOhms() - lost : 0;
    }

    @Override
    public MotorCurrent at(double speed) {
        double emf = c.torqueConstant() * speed;
        double byVolts = (effectiveVolts - emf) / loopOhms;
        double byLimit = limitedLoopOhms > 0
                ? (limitedVolts - emf) / limitedLoopOhms
                : c.feed().limitAmps();
        return MotorCurrent.steady(Math.max(0, Math.min(byVolts, byLimit)), c.duty());
    }

    @Override
    public double speedAgainst(double torque) {
        double byVolts = speed(effectiveVolts, loopOhms, torque);
        double byLimit = limitedLoopOhms > 0
                ? speed(limitedVolts, limitedLoopOhms, torque)
                : (c.torqueConstant() * c.feed().limitAmps() - torque) / c.viscousNewtonMetreSecond();
        return Math.max(0, Math.min(byVolts, byLimit));
    }

    private double speed(double volts, double ohms, double torque) {
        double k = c.torqueConstant();
        return (volts * k - torque * ohms) / (k * k + c.viscousNewtonMetreSecond() * ohms);
    }
}
