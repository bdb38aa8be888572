package org.pumpwright.host.plant.hydraulic;

import static org.pumpwright.host.plant.UsUnits.PSI;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Balance of valve, oil motor, head and nozzle at one opening. A compensated valve passes {@code Q_rated x^n} as long as
 * supply less motor pressure leaves it its own drop; below that it is an orifice, {@code Q ~ sqrt(p_s - p_m)}; with its
 * compensator stuck it is an orifice always. Thread-safe.
 */
final class OilCircuit {

    /** Drop the compensator needs for itself; below it the valve no longer holds the flow. */
    private static final double COMPENSATOR_NEEDS_PASCAL = 100 * PSI;

    /** Drop at which a valve with a stuck compensator passes what it should: the middle of its adjustment, assumed. */
    private static final double STUCK_PASSES_RATED_PASCAL = 1992 * PSI;

    private static final double RELATIVE_ACCURACY = 1e-12;
    private static final double SPEED_ACCURACY = 1e-9;
    private static final double FLOW_ACCURACY = 1e-15;
    private static final int MOST_EVALUATIONS = 200;

    private final OilMotorParameters motor;
    private final HydraulicParameters parameters;
    private final double nozzle;
    private final double wanted;

    OilCircuit(HydraulicParameters parameters, double nozzle, double opening) {
        this.parameters = parameters;
        this.nozzle = nozzle;
        motor = parameters.motor();
        SpoolParameters spool = parameters.spool();
        wanted = opening <= 0 ? 0 : spool.ratedOilM3PerSecond() * StrictMath.pow(opening, spool.flowExponent());
    }

    /** The state in which oil given and oil taken agree; at rest when the oil does not turn the motor. */
    OilState balance() {
        double least = motor.dropPascal(0);
        if (surplus(0) <= 0 || least >= motor.reliefPascal()) {
            return atRest(least);
        }
        double top = wanted * orificeFactor(0) / motor.displacementM3PerRadian() + 1;
        double speed = root(top, this::surplus);
        if (drop(speed) > motor.reliefPascal()) {
            speed = root(speed, w -> motor.reliefPascal() - drop(w));
        }
        return stateAt(speed);
    }

    /** All oil leaves by the leak (or the relief valve), which needs no more pressure than that, nor more than turning. */
    private OilState atRest(double least) {
        double leak = motor.leakM3PerSecondPascal();
        double oil = Math.min(given(0), parameters.oil().availableM3PerSecond());
        double most =
                Math.min(Math.min(least, motor.reliefPascal()), parameters.oil().pressurePascal());
        double drop = oil == 0 ? 0 : leak == 0 ? most : Math.min(oil / leak, most);
        return new OilState(0, oil, drop, supplyPascal(drop), LoadPoint.NONE);
    }

    private OilState stateAt(double speed) {
        double drop = drop(speed);
        double oil = Math.min(given(drop), parameters.oil().availableM3PerSecond());
        return new OilState(speed, oil, drop, supplyPascal(drop), load(speed));
    }

    private double surplus(double speed) {
        double drop = drop(speed);
        double oil = Math.min(given(drop), parameters.oil().availableM3PerSecond());
        return oil - motor.displacementM3PerRadian() * speed - motor.leakM3PerSecondPascal() * drop;
    }

    private LoadPoint load(double speed) {
        return motor.coupled() ? parameters.head().against(speed, nozzle) : LoadPoint.NONE;
    }

    private double drop(double speed) {
        return motor.dropPascal(load(speed).shaftNewtonMetre());
    }

    private double given(double drop) {
        return wanted * orificeFactor(drop);
    }

    private double orificeFactor(double drop) {
        double left = Math.max(0, parameters.oil().pressurePascal() - drop);
        double compensated = Math.min(1, Math.sqrt(left / COMPENSATOR_NEEDS_PASCAL));
        double stuck = Math.sqrt(left / STUCK_PASSES_RATED_PASCAL);
        return compensated + parameters.spool().compensatorStuckShare() * (stuck - compensated);
    }

    /** A source asked for more than it has sags to what motor and valve need for the oil it gives. */
    private double supplyPascal(double drop) {
        double available = parameters.oil().availableM3PerSecond();
        double asked = given(drop);
        if (asked <= available) {
            return parameters.oil().pressurePascal();
        }
        double share = available / asked;
        return Math.min(parameters.oil().pressurePascal(), drop + share * share * COMPENSATOR_NEEDS_PASCAL);
    }

    private static double root(double top, UnivariateFunction f) {
        return new BracketingNthOrderBrentSolver(RELATIVE_ACCURACY, SPEED_ACCURACY, FLOW_ACCURACY, 5)
                .solve(MOST_EVALUATIONS, f, 0, top, AllowedSolution.ANY_SIDE);
    }
}
