package org.pumpwright.host.plant.hydraulic;

import org.pumpwright.host.plant.Range;

/**
 * The oil motor with its coupling: {@code Q_oil = D w + l dp}, {@code D dp eta = shaft torque + T_f}. Thread-safe.
 *
 * @param displacementM3PerRadian oil per radian
 * @param leakM3PerSecondPascal oil past the motor per pressure drop; it leaves by the case drain
 * @param torqueEfficiency share of the torque that reaches the shaft
 * @param frictionNewtonMetre torque lost at any speed
 * @param reliefPascal pressure drop at which the relief valve passes the rest of the oil by
 * @param coupled whether the shaft turns the pump
 */
public record OilMotorParameters(
        double displacementM3PerRadian,
        double leakM3PerSecondPascal,
        double torqueEfficiency,
        double frictionNewtonMetre,
        double reliefPascal,
        boolean coupled) {

    public OilMotorParameters {
        Range.check("motor displacement", displacementM3PerRadian, 1e-9, 1, "m3/rad");
        Range.check("motor leak", leakM3PerSecondPascal, 0, 1, "m3/s/Pa");
        Range.check("motor torque efficiency", torqueEfficiency, 0.05, 1, "");
        Range.check("motor friction", frictionNewtonMetre, 0, 1e5, "N·m");
        Range.check("relief pressure", reliefPascal, 1e3, 1e9, "Pa");
    }

    OilMotorParameters withLeak(double leak) {
        return new OilMotorParameters(
                displacementM3PerRadian, leak, torqueEfficiency, frictionNewtonMetre, reliefPascal, coupled);
    }

    OilMotorParameters withFriction(double newtonMetre) {
        return new OilMotorParameters(
                displacementM3PerRadian, leakM3PerSecondPascal, torqueEfficiency, newtonMetre, reliefPascal, coupled);
    }

    OilMotorParameters withRelief(double pascal) {
        return new OilMotorParameters(
                displacementM3PerRadian, leakM3PerSecondPascal, torqueEfficiency, frictionNewtonMetre, pascal, coupled);
    }

    OilMotorParameters uncoupled() {
        return new OilMotorParameters(
                displacementM3PerRadian,
                leakM3PerSecondPascal,
                torqueEfficiency,
                frictionNewtonMetre,
                reliefPascal,
                false);
    }

    /** Pressure drop that the shaft's torque asks for. */
    double dropPascal(double shaftTorque) {
        return (shaftTorque + frictionNewtonMetre) / (displacementM3PerRadian * torqueEfficiency);
    }
}
