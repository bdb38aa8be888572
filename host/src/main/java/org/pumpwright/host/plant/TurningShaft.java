package org.pumpwright.host.plant;

/**
 * Shaft, current and pressure within the turn:
 *
 * <pre>
 * J dw/dt = k I - T_f - B w - torque of the chambers
 * L dI/dt = R (I_steady(w) - I)
 * C dp/dt = flow of the chambers - K sqrt(p)
 * </pre>
 *
 * The pressure is advanced implicitly, which is a quadratic in its root and stays stable down to zero. Confined to the
 * plant's thread.
 */
final class TurningShaft {

    private final PumpParameters p;
    private final OperatingCurve curve;
    private final double[] shares;
    private final double outlet;
    private final double extraLost;
    private double angle;
    private double speed;
    private double amps;
    private double pressure;

    TurningShaft(PumpParameters p, OperatingCurve curve, double[] shares) {
        this.p = p;
        this.curve = curve;
        this.shares = shares;
        outlet = p.stand().nozzleM3PerSecondRootPascal() + p.stand().recirculationM3PerSecondRootPascal();
        pressure = curve.breaksAway(0) ? curve.balancePressure() : 0;
        OperatingPoint mean = pressure > 0 ? curve.turningAt(pressure) : new OperatingPoint(0, 0, curve.standstill());
        speed = mean.speedRadPerSecond();
        amps = mean.motorAmps();
        extraLost = starvedShare(mean);
    }

    void advance(double seconds) {
        if (speed <= 0) {
            return;
        }
        HeadParameters head = p.head();
        double lost = lostShare();
        double delivery = Chambers.delivery(shares, angle, Math.min(1, lost + (1 - lost) * extraLost));
        double torque = head.displacementM3PerRadian() * pressure * delivery / (head.torqueEfficiency() * (1 - lost));
        double flow = head.displacementM3PerRadian() * speed * delivery * (1 - head.airFraction()) - leak();
        amps += (steadyAmps() - amps)
                * (1 - StrictMath.exp(-seconds * loopOhms() / p.dynamics().inductanceHenry()));
        double accelerating =
                curve.circuit().torqueAt(speed, amps) - p.physics().friction(p.motor(), speed) - torque;
        speed = Math.max(0, speed + seconds * accelerating / p.dynamics().inertiaKilogramMetre2());
        pressure = pressureAfter(seconds / p.stand().lines().hoseM3PerPascal(), flow);
        angle = (angle + speed * seconds) % (2 * Math.PI);
    }

    double pressurePa() {
        return pressure;
    }

    double leadAmps() {
        MotorCurrent steady = curve.currentAt(speed);
        double factor = steady.motorAmps() > 0 ? amps / steady.motorAmps() : 0;
        return curve.leadAmps(new OperatingPoint(speed, 0, steady.times(factor)));
    }

    private double pressureAfter(double secondsPerVolume, double flow) {
        // Over a step so short a nozzle of another exponent is a plain one of the constant it has at this pressure.
        double constant = pressure > 0 ? outlet * p.physics().outflow(pressure) / Math.sqrt(pressure) : outlet;
        double half = constant * secondsPerVolume / 2;
        double root = Math.sqrt(half * half + Math.max(0, pressure + flow * secondsPerVolume)) - half;
        return root * root;
    }

    /** Current that the drive would settle at, with the contact and the shorted turns at this angle. */
    private double steadyAmps() {
        double turns = 1 + p.dynamics().turnsSwing() * StrictMath.cos(2 * angle);
        return curve.currentAt(speed).motorAmps() * turns * curve.loopOhms() / loopOhms();
    }

    private double loopOhms() {
        MotorParameters motor = p.motor();
        double swing =
                motor.contactSwing() == 0 ? 0 : motor.contactOhms() * motor.contactSwing() * StrictMath.cos(angle);
        return curve.loopOhms() + swing;
    }

    private double lostShare() {
        HeadParameters head = p.head();
        double lost =
                head.complianceLossPerPascal() * pressure + head.backflowM3PerRadian() / head.displacementM3PerRadian();
        return Math.min(0.95, lost);
    }

    private double leak() {
        HeadParameters head = p.head();
        return head.slipM3PerSecondPascal() * pressure
                + head.bypassM3PerSecondPascal() * Math.max(0, pressure - head.bypassOpensPascal());
    }

    /** Share of what a full chamber would deliver that a clogged inlet keeps from it; 0 when the inlet keeps up. */
    private double starvedShare(OperatingPoint mean) {
        HeadParameters head = p.head();
        if (mean.flowM3PerSecond() < head.inletCeilingM3PerSecond()) {
            return 0;
        }
        double full = head.displacementM3PerRadian()
                * head.liveShare()
                * speed
                * (1 - lostShare())
                * (1 - head.airFraction());
        return Math.max(0, 1 - (head.inletCeilingM3PerSecond() + leak()) / full);
    }
}
