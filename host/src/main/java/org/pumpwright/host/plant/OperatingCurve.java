package org.pumpwright.host.plant;

import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * What the pump does against each pressure at one duty, winding temperature and brush contact, in steady motion. The
 * brushed-motor equations are the textbook ones, {@code U = I R + k w} and {@code k I = T}; the pulse-width modulated
 * drive is averaged over its period, which holds while the current never stops flowing. Thread-safe.
 */
final class OperatingCurve {

    /** Copper's resistance rises by this share per kelvin (handbook value at 20 °C). */
    private static final double COPPER_PER_KELVIN = 0.00393;

    /** Ceramic magnets lose about this share per kelvin (from memory). */
    private static final double MAGNET_PER_KELVIN = -0.002;

    private static final double REFERENCE_KELVIN = UsUnits.ZERO_CELSIUS_KELVIN + 20;

    private static final double RELATIVE_ACCURACY = 1e-10;
    private static final double ROOT_PASCAL_ACCURACY = 1e-6;
    private static final double FLOW_ACCURACY = 1e-15;
    private static final int MOST_EVALUATIONS = 200;

    private final MotorParameters motor;
    private final HeadParameters head;
    private final StandParameters stand;
    private final double duty;
    private final double torqueConstant;
    private final double contactOhms;
    private final double armatureOhms;
    private final double loopOhms;
    private final double effectiveVolts;
    private final double limitAmps;
    private final double liveDisplacement;
    private final double liveBackflow;

    /** Everything that does not depend on pressure is worked out here, once. */
    OperatingCurve(PumpParameters p, double duty, double windingKelvin, double contactOhms) {
        this.motor = p.motor();
        this.head = p.head();
        this.stand = p.stand();
        this.duty = duty;
        this.contactOhms = contactOhms;
        double warmer = windingKelvin - REFERENCE_KELVIN;
        torqueConstant = motor.torqueConstant() * (1 + MAGNET_PER_KELVIN * warmer);
        armatureOhms = motor.resistanceOhms() * (1 + COPPER_PER_KELVIN * warmer) + contactOhms;
        loopOhms = armatureOhms + duty * (stand.supplyOhms() + stand.leadOhms());
        effectiveVolts = duty * stand.openCircuitVolts() - (1 - duty) * stand.freewheelVolts() - motor.brushVolts();
        limitAmps = duty > 0 ? stand.supplyLimitAmps() / duty : 0;
        liveDisplacement = head.displacementM3PerRadian() * head.liveShare();
        liveBackflow = head.backflowM3PerRadian() * head.liveShare();
    }

    /** Resistance the motor current meets besides the brush contact's, supply and lead counted by the duty. */
    double ohmsBesidesContact() {
        return loopOhms - contactOhms;
    }

    /** Motor current as it swings by a factor about its mean; the supply's limit holds. */
    OperatingPoint withRipple(OperatingPoint mean, double factor) {
        double amps = factor == 1 ? mean.motorAmps() : Math.min(mean.motorAmps() * factor, limitAmps);
        return new OperatingPoint(mean.speedRadPerSecond(), mean.flowM3PerSecond(), amps);
    }

    /** Motor current while the shaft stands still. */
    double standstillAmps() {
        return Math.max(0, Math.min(effectiveVolts / loopOhms, limitAmps));
    }

    /** Whether a standing shaft begins to turn against the pressure. */
    boolean breaksAway(double pressurePa) {
        return torqueConstant * standstillAmps() >= Math.max(motor.breakawayNewtonMetre(), loadTorque(pressurePa));
    }

    /** The turning pump against a pressure; speed 0 when the torque no longer suffices. */
    OperatingPoint turningAt(double pressurePa) {
        double speed = fullSpeed(pressurePa);
        double flow = pumpedFlow(pressurePa, speed);
        if (flow > head.inletCeilingM3PerSecond()) {
            return starvedAt(pressurePa);
        }
        double amps = speed > 0 ? motorAmps(loadTorque(pressurePa), speed) : standstillAmps();
        return new OperatingPoint(speed, flow, amps);
    }

    /**
     * Pressure at which the turning pump gives what nozzle and recirculation take. 0 when it gives nothing at no
     * pressure.
     */
    double balancePressure() {
        double outlet = stand.nozzleM3PerSecondRootPascal() + stand.recirculationM3PerSecondRootPascal();
        double stall = stallPressure();
        if (stall <= 0 || flowAt(0) <= 0) {
            return 0;
        }
        // In the root of the pressure the surplus is smooth down to zero, which the pressure itself is not.
        double root = new BracketingNthOrderBrentSolver(RELATIVE_ACCURACY, ROOT_PASCAL_ACCURACY, FLOW_ACCURACY, 5)
                .solve(
                        MOST_EVALUATIONS,
                        x -> flowAt(x * x) - outlet * x,
                        0,
                        Math.sqrt(stall),
                        AllowedSolution.ANY_SIDE);
        return root * root;
    }

    /**
     * Supply voltage at the unit's pins, mean over the drive's period: it sags by the mean current, or, with the supply
     * at its limit, to whatever the motor leaves.
     */
    double terminalVolts(OperatingPoint point) {
        double feedOhms = stand.supplyOhms() + stand.leadOhms();
        double battery = duty * point.motorAmps();
        if (duty > 0 && battery >= stand.supplyLimitAmps() * (1 - 1e-9)) {
            double conducting = (point.motorAmps() * armatureOhms
                            + torqueConstant * point.speedRadPerSecond()
                            + (1 - duty) * stand.freewheelVolts()
                            + motor.brushVolts())
                    / duty;
            return Math.min(
                    conducting + (1 - duty) * point.motorAmps() * feedOhms,
                    stand.openCircuitVolts() - battery * feedOhms);
        }
        return stand.openCircuitVolts() - battery * feedOhms;
    }

    /** Heat set free in the winding and its surroundings; the rest of the friction warms the head and the water. */
    double windingWatts(OperatingPoint point) {
        double frictionShareInMotor = 0.6;
        double amps = point.motorAmps();
        double speed = point.speedRadPerSecond();
        return amps * amps * armatureOhms
                + motor.brushVolts() * amps
                + frictionShareInMotor * motor.runningFrictionNewtonMetre() * speed
                + motor.viscousNewtonMetreSecond() * speed * speed;
    }

    private double flowAt(double pressurePa) {
        return Math.min(pumpedFlow(pressurePa, fullSpeed(pressurePa)), head.inletCeilingM3PerSecond());
    }

    private double loadTorque(double pressurePa) {
        return motor.runningFrictionNewtonMetre() + liveDisplacement * pressurePa / head.torqueEfficiency();
    }

    private double motorAmps(double torque, double speed) {
        return (torque + motor.viscousNewtonMetreSecond() * speed) / torqueConstant;
    }

    /** Speed with the chambers filling fully: the lower of what voltage and what the supply's current limit allow. */
    private double fullSpeed(double pressurePa) {
        double torque = loadTorque(pressurePa);
        double viscous = motor.viscousNewtonMetreSecond();
        double byVolts = (effectiveVolts * torqueConstant - torque * loopOhms)
                / (torqueConstant * torqueConstant + viscous * loopOhms);
        double byAmps = (torqueConstant * limitAmps - torque) / viscous;
        return Math.max(0, Math.min(byVolts, byAmps));
    }

    private double pumpedFlow(double pressurePa, double speed) {
        return liveDisplacement * speed * filling(pressurePa) - liveBackflow * speed - pressureLeak(pressurePa);
    }

    private double filling(double pressurePa) {
        return Math.max(0, 1 - head.complianceLossPerPascal() * pressurePa) * (1 - head.airFraction());
    }

    private double pressureLeak(double pressurePa) {
        return head.slipM3PerSecondPascal() * pressurePa
                + head.bypassM3PerSecondPascal() * Math.max(0, pressurePa - head.bypassOpensPascal());
    }

    /**
     * Speed and current when the inlet cannot keep up. A chamber that fills only in part loads the shaft only over that
     * part of its stroke, so the pressure's torque becomes {@code p (Q_ceiling + leaks) / (eta filling w) + p q_b /
     * (eta filling)}, and the torque balance a quadratic in speed of which the larger root is the running one.
     */
    private OperatingPoint starvedAt(double pressurePa) {
        double perPressure = pressurePa / (head.torqueEfficiency() * filling(pressurePa));
        double constantTorque = motor.runningFrictionNewtonMetre() + perPressure * liveBackflow;
        double hydraulicWatts = perPressure * (head.inletCeilingM3PerSecond() + pressureLeak(pressurePa));
        double slope = torqueConstant * torqueConstant / loopOhms + motor.viscousNewtonMetreSecond();
        double surplus = torqueConstant * effectiveVolts / loopOhms - constantTorque;
        double speed = (surplus + Math.sqrt(Math.max(0, surplus * surplus - 4 * slope * hydraulicWatts))) / (2 * slope);
        return new OperatingPoint(
                speed, head.inletCeilingM3PerSecond(), motorAmps(constantTorque + hydraulicWatts / speed, speed));
    }

    private double stallPressure() {
        double spare = torqueConstant * standstillAmps() - motor.runningFrictionNewtonMetre();
        return spare * head.torqueEfficiency() / liveDisplacement;
    }
}
