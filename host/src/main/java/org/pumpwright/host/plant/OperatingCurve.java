package org.pumpwright.host.plant;

import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * What the pump does against each pressure at one duty, winding temperature and brush contact, in steady motion. The
 * brushed-motor equations are the textbook ones, {@code U = I R + k w} and {@code k I = T}; what the pulse-width modulated
 * drive makes of its duty is the {@link Drive}'s business. Thread-safe.
 */
final class OperatingCurve {

    /** Copper's resistance rises by this share per kelvin (handbook value at 20 °C). */
    private static final double COPPER_PER_KELVIN = 0.00393;

    /** Ceramic magnets lose about this share per kelvin (from memory). */
    private static final double MAGNET_PER_KELVIN = -0.002;

    private static final double REFERENCE_KELVIN = UsUnits.ZERO_CELSIUS_KELVIN + 20;

    private static final double RELATIVE_ACCURACY = 1e-10;
    private static final double SPEED_ACCURACY = 1e-9;
    private static final double FLOW_ACCURACY = 1e-15;
    private static final int MOST_EVALUATIONS = 200;

    /** 0.1 N·m turns 6e-5 kg·m2 by a thousandth of a radian in about a millisecond. */
    private static final double FREEING_HERTZ = 1000;

    private static final double SPEED_SHARE = 1e-10;
    private static final double FALLING_SHARE = 1e-8;

    /** Speeds that are tried below the one without pressure. */
    private static final int LOOKED_AT = 24;

    private final MotorParameters motor;
    private final HeadParameters head;
    private final StandParameters stand;
    private final PumpPhysics physics;
    private final double duty;
    private final DriveCircuit circuit;
    private final Drive drive;
    private final double contactOhms;
    private final double liveDisplacement;
    private final double liveBackflow;

    /** Everything that does not depend on pressure is worked out here, once. */
    OperatingCurve(PumpParameters p, double duty, double windingKelvin, double contactOhms) {
        this.motor = p.motor();
        this.head = p.head();
        this.stand = p.stand();
        this.physics = p.physics();
        this.duty = duty;
        this.contactOhms = contactOhms;
        double warmer = windingKelvin - REFERENCE_KELVIN;
        circuit = new DriveCircuit(
                duty,
                Feed.of(stand, p.circuit().caseLeakOhms(), duty),
                motor.resistanceOhms() * (1 + COPPER_PER_KELVIN * warmer) + contactOhms,
                motor.brushVolts(),
                stand.freewheelVolts(),
                motor.torqueConstant() * (1 + MAGNET_PER_KELVIN * warmer),
                motor.viscousNewtonMetreSecond(),
                p.dynamics().inductanceHenry());
        drive = Drive.of(circuit, stand.driveHertz());
        liveDisplacement = head.displacementM3PerRadian() * head.liveShare();
        liveBackflow = head.backflowM3PerRadian() * head.liveShare();
    }

    DriveCircuit circuit() {
        return circuit;
    }

    /** Resistance the motor current meets, supply and lead counted by the duty. */
    double loopOhms() {
        return circuit.armatureOhms() + duty * circuit.feed().ohms();
    }

    /** The same without the brush contact's. */
    double ohmsBesidesContact() {
        return loopOhms() - contactOhms;
    }

    /** The motor current at a speed. */
    MotorCurrent currentAt(double speed) {
        return drive.at(speed);
    }

    /** Motor current as it swings by a factor about its mean; the supply's limit holds. */
    OperatingPoint withRipple(OperatingPoint mean, double factor) {
        double most = mean.motorAmps() > 0 ? circuit.feed().limitAmps() / mean.motorAmps() : factor;
        MotorCurrent current = factor == 1 ? mean.current() : mean.current().times(Math.min(factor, most));
        return new OperatingPoint(mean.speedRadPerSecond(), mean.flowM3PerSecond(), current);
    }

    /** Current while the shaft stands still. */
    MotorCurrent standstill() {
        return drive.at(0);
    }

    /** What the supply's lead carries on average, a leak to the case included. */
    double leadAmps(OperatingPoint point) {
        return circuit.feed().leadAmps(point.current().supplyAmps(), duty, stand.openCircuitVolts());
    }

    /**
     * Whether a standing shaft begins to turn against the pressure. The peaks of a slow drive's current free it; those of
     * a fast one move the rotor by less than a thousandth of a radian each, so that only their mean counts.
     */
    boolean breaksAway(double pressurePa) {
        MotorCurrent current = standstill();
        double amps = stand.driveHertz() < FREEING_HERTZ ? current.peakAmps() : current.motorAmps();
        double torque = circuit.torqueConstant() * amps;
        return torque >= Math.max(motor.breakawayNewtonMetre(), loadTorque(pressurePa, 0));
    }

    /** The turning pump against a pressure; speed 0 when the torque no longer suffices. */
    OperatingPoint turningAt(double pressurePa) {
        double speed = fullSpeed(pressurePa);
        double flow = pumpedFlow(pressurePa, speed);
        if (flow > head.inletCeilingM3PerSecond()) {
            return starvedAt(pressurePa);
        }
        return new OperatingPoint(
                speed, flow, speed > 0 ? carrying(loadTorque(pressurePa, speed), speed) : standstill());
    }

    /**
     * Pressure at which the turning pump gives what nozzle and recirculation take. 0 when it gives nothing at no
     * pressure.
     */
    double balancePressure() {
        double outlet = stand.nozzleM3PerSecondRootPascal() + stand.recirculationM3PerSecondRootPascal();
        // With friction that falls with speed this is more than the speed without pressure, and a sound end all the
        // same.
        double freeSpeed = drive.speedAgainst(loadTorque(0, Double.POSITIVE_INFINITY));
        if (pumpedFlow(0, freeSpeed) <= 0) {
            return 0;
        }
        double slow = 0;
        if (stallPressure() <= 0) {
            slow = slowerThanBalance(freeSpeed, outlet);
            if (slow <= 0) {
                return 0;
            }
        }
        if (surplus(freeSpeed, outlet) <= 0) {
            // On the edge of turning the speed is nothing but the solver's own accuracy.
            return pressureAt(freeSpeed);
        }
        // Over speed, because the pressure of a speed is explicit while the speed of a pressure may not be.
        double speed = new BracketingNthOrderBrentSolver(RELATIVE_ACCURACY, SPEED_ACCURACY, FLOW_ACCURACY, 5)
                .solve(MOST_EVALUATIONS, w -> surplus(w, outlet), slow, freeSpeed, AllowedSolution.ANY_SIDE);
        return pressureAt(speed);
    }

    /**
     * Supply voltage at the unit's pins, mean over the drive's period: it sags by the mean current, or, with the supply
     * at its limit, to whatever the motor leaves.
     */
    double terminalVolts(OperatingPoint point) {
        double feedOhms = stand.supplyOhms() + stand.leadOhms();
        double lead = leadAmps(point);
        double free = stand.openCircuitVolts() - lead * feedOhms;
        if (duty > 0 && lead >= stand.supplyLimitAmps() * (1 - 1e-9)) {
            return Math.min(limitedVolts(point) + (1 - duty) * circuit.feed().limitAmps() * feedOhms, free);
        }
        return free;
    }

    /** Voltage while the switch conducts with the supply at its limit: what motor or leak need for its current. */
    private double limitedVolts(OperatingPoint point) {
        if (circuit.feed().leaks()) {
            return (circuit.feed().limitAmps() - point.motorAmps())
                    * circuit.feed().leakOhms();
        }
        return (point.motorAmps() * circuit.armatureOhms()
                        + circuit.torqueConstant() * point.speedRadPerSecond()
                        + (1 - duty) * stand.freewheelVolts()
                        + motor.brushVolts())
                / duty;
    }

    /** Heat set free in the winding and its surroundings; the rest of the friction warms the head and the water. */
    double windingWatts(OperatingPoint point) {
        double frictionShareInMotor = 0.6;
        double speed = point.speedRadPerSecond();
        return point.current().meanSquare() * circuit.armatureOhms()
                + motor.brushVolts() * point.motorAmps()
                + frictionShareInMotor * physics.friction(motor, speed) * speed
                + motor.viscousNewtonMetreSecond() * speed * speed;
    }

    /** What the pump gives more than the outlet takes, at the pressure that the motor's torque holds at this speed. */
    private double surplus(double speed, double outlet) {
        double pressure = pressureAt(speed);
        double flow = Math.min(pumpedFlow(pressure, speed), head.inletCeilingM3PerSecond());
        return flow - outlet * physics.outflow(pressure);
    }

    /**
     * A speed at which the outlet takes more than the pump gives, where the motor's torque holds no pressure at standstill:
     * friction that falls with speed lets such a pump keep turning. 0 when there is none.
     */
    private double slowerThanBalance(double freeSpeed, double outlet) {
        for (int part = LOOKED_AT - 1; physics.frictionFalls() && part > 0; part--) {
            double speed = freeSpeed * part / LOOKED_AT;
            if (surplus(speed, outlet) < 0) {
                return speed;
            }
        }
        return 0;
    }

    private double pressureAt(double speed) {
        double torque = circuit.torqueAt(speed, drive.at(speed).motorAmps()) - physics.friction(motor, speed);
        return Math.max(0, torque * head.torqueEfficiency() / liveDisplacement);
    }

    private double loadTorque(double pressurePa, double speed) {
        return physics.friction(motor, speed) + liveDisplacement * pressurePa / head.torqueEfficiency();
    }

    /** The current that carries a torque at the speed which the drive gives it. */
    private MotorCurrent carrying(double torque, double speed) {
        if (drive instanceof AveragedDrive) {
            double amps = (torque + motor.viscousNewtonMetreSecond() * speed) / circuit.torqueConstant();
            return MotorCurrent.steady(amps, duty);
        }
        return drive.at(speed);
    }

    /**
     * Speed with the chambers filling fully. Where friction falls with speed, each round comes closer to the fastest speed
     * that the torque holds, from above.
     */
    private double fullSpeed(double pressurePa) {
        double speed = drive.speedAgainst(loadTorque(pressurePa, Double.POSITIVE_INFINITY));
        for (int i = 0; physics.frictionFalls() && i < MOST_EVALUATIONS; i++) {
            double before = speed;
            speed = drive.speedAgainst(loadTorque(pressurePa, before));
            if (before - speed <= FALLING_SHARE * before) {
                break;
            }
        }
        return speed;
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
     * (eta filling)}. From the speed of full chambers, which is too low, each round of speed and torque comes closer to
     * the running one from below.
     */
    private OperatingPoint starvedAt(double pressurePa) {
        double perPressure = pressurePa / (head.torqueEfficiency() * filling(pressurePa));
        double backflowTorque = perPressure * liveBackflow;
        double hydraulicWatts = perPressure * (head.inletCeilingM3PerSecond() + pressureLeak(pressurePa));
        double speed = fullSpeed(pressurePa);
        double torque = physics.friction(motor, speed) + backflowTorque + hydraulicWatts / speed;
        for (int i = 0; i < MOST_EVALUATIONS; i++) {
            double before = speed;
            speed = drive.speedAgainst(torque);
            torque = physics.friction(motor, speed) + backflowTorque + hydraulicWatts / speed;
            if (speed - before <= SPEED_SHARE * speed) {
                break;
            }
        }
        return new OperatingPoint(speed, head.inletCeilingM3PerSecond(), carrying(torque, speed));
    }

    private double stallPressure() {
        double spare = circuit.torqueConstant() * standstill().motorAmps() - physics.friction(motor, 0);
        return spare * head.torqueEfficiency() / liveDisplacement;
    }
}
