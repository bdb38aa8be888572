package org.pumpwright.host.plant;

import static org.pumpwright.host.plant.UsUnits.PSI;

/**
 * Which laws a simulated pump and its nozzle obey, beside their parameters. The plain laws are those of
 * docs/metrology/plant.md; the others serve to see what becomes of a judgement when units do not obey the laws that its
 * causes were worked out by.
 *
 * <p>Friction after R. Stribeck, with the exponent 2 (B. Armstrong-Hélouvry, P. Dupont and C. Canudas de Wit, Automatica 30
 * (1994) 1083, from memory): {@code T(w) = T_f + (T_s - T_f) exp(-(w/w_s)^2)}, which falls from breakaway to running friction
 * as the shaft gets faster; where breakaway friction is the smaller one, it stays at the running friction. The nozzle's flow is {@code K sqrt(p_0) (p/p_0)^n}; with n = 0.5, the turbulent one of a sharp
 * edge, that is {@code K sqrt(p)} whatever p_0. The recirculation valve obeys the same law. Thread-safe.
 *
 * @param stribeckRadPerSecond w_s, the speed at which about a third of what breakaway friction is above running friction is
 *     left; 0 for friction that does not depend on speed
 * @param nozzleExponent n, 0.3 to 0.7
 * @param nozzleReferencePascal p_0, the pressure at which the nozzle's constant was found
 */
public record PumpPhysics(double stribeckRadPerSecond, double nozzleExponent, double nozzleReferencePascal) {
    /** Constant friction and a nozzle that obeys the square root. */
    public static final PumpPhysics PLAIN = new PumpPhysics(0, 0.5, 20 * PSI);

    private static final double SQUARE_ROOT = 0.5;

    public PumpPhysics {
        Range.check("Stribeck speed", stribeckRadPerSecond, 0, 1000, "rad/s");
        Range.check("nozzle exponent", nozzleExponent, 0.3, 0.7, "");
        Range.check("nozzle reference pressure", nozzleReferencePascal, 1, 1e8, "Pa");
    }

    /** The same with friction that falls with speed; 0 for friction that does not. */
    public PumpPhysics withStribeckAt(double radPerSecond) {
        return new PumpPhysics(radPerSecond, nozzleExponent, nozzleReferencePascal);
    }

    /** The same with another exponent of the nozzle. */
    public PumpPhysics withNozzleExponent(double exponent) {
        return new PumpPhysics(stribeckRadPerSecond, exponent, nozzleReferencePascal);
    }

    /** Whether friction depends on speed. */
    boolean frictionFalls() {
        return stribeckRadPerSecond > 0;
    }

    /** Friction of the turning shaft without its viscous share, in N·m. */
    double friction(MotorParameters motor, double speedRadPerSecond) {
        double running = motor.runningFrictionNewtonMetre();
        if (!frictionFalls()) {
            return running;
        }
        double share = speedRadPerSecond / stribeckRadPerSecond;
        double more = Math.max(0, motor.breakawayNewtonMetre() - running);
        return running + more * StrictMath.exp(-share * share);
    }

    /** What an outlet of constant 1 lets through, in root pascal: the root of the pressure for a plain nozzle. */
    double outflow(double pressurePa) {
        if (nozzleExponent == SQUARE_ROOT) {
            return Math.sqrt(pressurePa);
        }
        return Math.sqrt(nozzleReferencePascal) * StrictMath.pow(pressurePa / nozzleReferencePascal, nozzleExponent);
    }

    /** The pressure of an {@link #outflow}, in pascal. */
    double pressurePa(double outflow) {
        if (nozzleExponent == SQUARE_ROOT) {
            return outflow * outflow;
        }
        return nozzleReferencePascal * StrictMath.pow(outflow / Math.sqrt(nozzleReferencePascal), 1 / nozzleExponent);
    }
}
