package org.pumpwright.host.plant.hydraulic;

import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;
import static org.pumpwright.host.plant.UsUnits.PSI;

import org.pumpwright.host.plant.Range;

/**
 * A centrifugal head: {@code p = s rho (a0 n^2 + a1 n Q - a2 Q^2)} with n in turns per second. With the same nozzle flow
 * grows as n, pressure as n^2 and shaft power as n^3 (the affinity laws, textbook), the shaft's torque being
 * {@code p Q / (eta w) + k w^2}. Thread-safe.
 *
 * @param a0 shut-off coefficient in m2
 * @param a1 linear coefficient in 1/m
 * @param a2 square coefficient in 1/m4
 * @param waterKgPerM3 density of the liquid
 * @param torqueEfficiency share of the hydraulic power in the power that pressure takes
 * @param discNewtonMetreSecondSquared torque of the disc per square of the speed
 * @param pressureShare s, 1 for a healthy impeller, less for one worn
 * @param slipNewtonMetre torque above which the impeller slips on its shaft
 * @param airFraction share of the flow that is air; it also thins the pressure
 */
public record CentrifugalHead(
        double a0,
        double a1,
        double a2,
        double waterKgPerM3,
        double torqueEfficiency,
        double discNewtonMetreSecondSquared,
        double pressureShare,
        double slipNewtonMetre,
        double airFraction)
        implements ProductHead {

    private static final double TURN = 2 * Math.PI;

    public CentrifugalHead {
        Range.check("a0", a0, 1e-9, 100, "m2");
        Range.check("a1", a1, -1e6, 1e6, "1/m");
        Range.check("a2", a2, 1, 1e12, "1/m4");
        Range.check("density", waterKgPerM3, 100, 3000, "kg/m3");
        Range.check("pump torque efficiency", torqueEfficiency, 0.05, 1, "");
        Range.check("disc torque", discNewtonMetreSecondSquared, 0, 1, "N·m·s2");
        Range.check("impeller pressure share", pressureShare, 0.01, 1, "");
        Range.check("slip torque", slipNewtonMetre, 1e-6, 1e6, "N·m");
        Range.check("air", airFraction, 0, 0.9, "");
    }

    /** Shut off 110 psi at 4000 turns a minute, 25 psi less at 30 gal/min; assumed. */
    static CentrifugalHead healthy() {
        double turns = 4000 / 60.0;
        double flow = 30 * GALLON_PER_MINUTE;
        return new CentrifugalHead(
                110 * PSI / (1000 * turns * turns), 0, 25 * PSI / (1000 * flow * flow), 1000, 0.6, 4e-6, 1, 1e6, 0);
    }

    @Override
    public LoadPoint against(double speedRadPerSecond, double nozzle) {
        LoadPoint point = ofImpeller(speedRadPerSecond, nozzle);
        if (point.shaftNewtonMetre() <= slipNewtonMetre) {
            return point;
        }
        // Torque goes as the square of the impeller's speed, so the slipping impeller turns at the root of the ratio.
        return ofImpeller(speedRadPerSecond * Math.sqrt(slipNewtonMetre / point.shaftNewtonMetre()), nozzle);
    }

    @Override
    public CentrifugalHead withAir(double fraction) {
        return new CentrifugalHead(
                a0,
                a1,
                a2,
                waterKgPerM3,
                torqueEfficiency,
                discNewtonMetreSecondSquared,
                pressureShare,
                slipNewtonMetre,
                fraction);
    }

    CentrifugalHead withImpeller(double share, double slip) {
        return new CentrifugalHead(
                a0, a1, a2, waterKgPerM3, torqueEfficiency, discNewtonMetreSecondSquared, share, slip, airFraction);
    }

    private LoadPoint ofImpeller(double speed, double nozzle) {
        if (speed <= 0) {
            return LoadPoint.NONE;
        }
        double turns = speed / TURN;
        double density = waterKgPerM3 * (1 - airFraction) * pressureShare;
        double flow = 0;
        double pressure = density * a0 * turns * turns;
        if (nozzle > 0) {
            double square = 1 / (nozzle * nozzle) + density * a2;
            double linear = density * a1 * turns;
            flow = (linear + Math.sqrt(linear * linear + 4 * square * pressure)) / (2 * square);
            pressure = flow * flow / (nozzle * nozzle);
        }
        double torque = pressure * flow / (torqueEfficiency * speed) + discNewtonMetreSecondSquared * speed * speed;
        return new LoadPoint(flow, pressure, torque);
    }
}
