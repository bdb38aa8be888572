package org.pumpwright.benchmarks.judgement;

import java.lang.reflect.RecordComponent;
import java.util.Random;
import java.util.Set;
import org.pumpwright.host.plant.DynamicsParameters;
import org.pumpwright.host.plant.HeadParameters;
import org.pumpwright.host.plant.MotorParameters;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.ThermalParameters;

/**
 * Parameters that are not what the model of the causes takes them for: each nominal value of a healthy unit, and each change
 * that a fault makes, is off by a factor of its own, 10 % (one standard deviation). Thread-safe.
 */
final class ParameterErrors {
    private static final double SHARE = 0.10;

    /** Beyond two and a half standard deviations a factor is cut off: a contact can't swing by more than all of itself. */
    private static final double MOST = 2.5;

    private static final double BEST_EFFICIENCY = 0.99;

    /** Shares of a whole, which can't be more than all of it. */
    private static final Set<String> SHARES = Set.of("contactSwing", "airFraction");

    /** In these each value is off by itself; in others all values go together, since they are thresholds of one thing. */
    private static final Set<Class<?>> EACH_BY_ITSELF =
            Set.of(MotorParameters.class, HeadParameters.class, DynamicsParameters.class);

    private ParameterErrors() {}

    /** Another nominal unit of about the same size; stand, meter and circuit stay. */
    static PumpParameters nominal(PumpParameters healthy, Random random) {
        return healthy.withMotor(scaled(healthy.motor(), random))
                .withHead(scaled(healthy.head(), random))
                .withThermal(scaled(healthy.thermal(), random))
                .withDynamics(scaled(healthy.dynamics(), random));
    }

    /** What a fault of another size makes of a unit. */
    static PumpParameters fault(PumpParameters before, PumpParameters after, Random random) {
        return (PumpParameters) changed(before, after, random);
    }

    private static MotorParameters scaled(MotorParameters m, Random random) {
        return new MotorParameters(
                m.resistanceOhms() * factor(random),
                m.brushVolts() * factor(random),
                m.torqueConstant() * factor(random),
                m.runningFrictionNewtonMetre() * factor(random),
                m.breakawayNewtonMetre() * factor(random),
                m.viscousNewtonMetreSecond() * factor(random),
                m.contactOhms(),
                m.contactSwing(),
                m.dropoutsPerMinute());
    }

    private static HeadParameters scaled(HeadParameters h, Random random) {
        return new HeadParameters(
                h.displacementM3PerRadian() * factor(random),
                h.complianceLossPerPascal() * factor(random),
                h.slipM3PerSecondPascal() * factor(random),
                h.backflowM3PerRadian() * factor(random),
                Math.min(BEST_EFFICIENCY, h.torqueEfficiency() * factor(random)),
                h.bypassOpensPascal() * factor(random),
                h.bypassM3PerSecondPascal() * factor(random),
                h.chambers(),
                h.deadChambers(),
                h.airFraction(),
                h.inletCeilingM3PerSecond());
    }

    private static ThermalParameters scaled(ThermalParameters t, Random random) {
        return new ThermalParameters(
                t.windingJoulePerKelvin() * factor(random),
                t.windingToCaseKelvinPerWatt() * factor(random),
                t.caseJoulePerKelvin() * factor(random),
                t.caseToAirKelvinPerWatt() * factor(random));
    }

    private static DynamicsParameters scaled(DynamicsParameters d, Random random) {
        return new DynamicsParameters(
                d.inductanceHenry() * factor(random),
                d.inertiaKilogramMetre2() * factor(random),
                d.chamberInequality(),
                d.turnsSwing());
    }

    private static double factor(Random random) {
        return StrictMath.exp(SHARE * Math.max(-MOST, Math.min(MOST, random.nextGaussian())));
    }

    /** Goes through a record and its records, so that no fault can be forgotten. */
    private static Object changed(Object before, Object after, Random random) {
        if (before.equals(after) || !after.getClass().isRecord()) {
            return after;
        }
        double common = factor(random);
        boolean each = EACH_BY_ITSELF.contains(after.getClass());
        try {
            RecordComponent[] components = after.getClass().getRecordComponents();
            Class<?>[] types = new Class<?>[components.length];
            Object[] values = new Object[components.length];
            for (int i = 0; i < components.length; i++) {
                types[i] = components[i].getType();
                Object was = components[i].getAccessor().invoke(before);
                Object is = components[i].getAccessor().invoke(after);
                values[i] = types[i] == double.class
                        ? within(components[i], resized((Double) was, (Double) is, each ? factor(random) : common))
                        : changed(was, is, random);
            }
            return after.getClass().getConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("parameters of " + after.getClass() + " can't be made anew", e);
        }
    }

    /** A share of a whole stays one. */
    private static double within(RecordComponent component, double value) {
        return SHARES.contains(component.getName()) ? Math.min(1, value) : value;
    }

    private static double resized(double before, double after, double factor) {
        if (before == after || Double.isInfinite(after)) {
            return after;
        }
        return Double.isInfinite(before) ? factor * after : before + factor * (after - before);
    }
}
