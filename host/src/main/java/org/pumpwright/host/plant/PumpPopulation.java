package org.pumpwright.host.plant;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Healthy units that differ as units of one model do: each parameter log-normal about the healthy value, the torque
 * efficiency and the protector's temperatures normal. The spreads are assumed starting values (docs/metrology/plant.md); the stand is the same for all.
 * Unit {@code i} of a seed is always the same unit, however many are drawn. Thread-safe.
 */
public final class PumpPopulation {

    /** Efficiency of the best units: the normal tail must not reach a head that gives back more than it gets. */
    private static final double BEST_TORQUE_EFFICIENCY = 0.99;

    /** A protector that closes where it opens would chatter. */
    private static final double LEAST_HYSTERESIS_KELVIN = 5;

    private final long seed;
    private final PumpParameters nominal;

    /** The population of a seed. */
    public PumpPopulation(long seed) {
        this(seed, PumpParameters.healthy());
    }

    /**
     * The population of a seed about another nominal unit, with the same spreads.
     *
     * @param nominal its stand, meter and laws are those of every unit
     */
    public PumpPopulation(long seed, PumpParameters nominal) {
        this.seed = seed;
        this.nominal = nominal;
    }

    /**
     * One unit.
     *
     * @throws IllegalArgumentException when the number is negative
     */
    public PumpParameters unit(int number) {
        if (number < 0) {
            throw new IllegalArgumentException("unit number " + number + " is below 0");
        }
        Random random = Streams.stream(seed, number);
        return new PumpParameters(
                motor(random),
                head(random),
                thermal(random),
                dynamics(random),
                nominal.circuit().withProtector(protector(random)),
                nominal.arrival(),
                nominal.stand(),
                nominal.meter(),
                nominal.physics());
    }

    /** The first units of the population. */
    public List<PumpParameters> units(int count) {
        return IntStream.range(0, count).mapToObj(this::unit).toList();
    }

    private MotorParameters motor(Random random) {
        MotorParameters m = nominal.motor();
        return new MotorParameters(
                spread(m.resistanceOhms(), 0.05, random),
                spread(m.brushVolts(), 0.08, random),
                spread(m.torqueConstant(), 0.03, random),
                spread(m.runningFrictionNewtonMetre(), 0.18, random),
                spread(m.breakawayNewtonMetre(), 0.20, random),
                spread(m.viscousNewtonMetreSecond(), 0.15, random),
                0,
                0,
                0);
    }

    private HeadParameters head(Random random) {
        HeadParameters h = nominal.head();
        double efficiency = h.torqueEfficiency() + 0.015 * random.nextGaussian();
        return new HeadParameters(
                spread(h.displacementM3PerRadian(), 0.02, random),
                spread(h.complianceLossPerPascal(), 0.15, random),
                spread(h.slipM3PerSecondPascal(), 0.35, random),
                spread(h.backflowM3PerRadian(), 0.25, random),
                Math.min(efficiency, BEST_TORQUE_EFFICIENCY),
                spread(h.bypassOpensPascal(), 0.05, random),
                spread(h.bypassM3PerSecondPascal(), 0.05, random),
                h.chambers(),
                0,
                0,
                Double.POSITIVE_INFINITY);
    }

    private ThermalParameters thermal(Random random) {
        ThermalParameters t = nominal.thermal();
        return new ThermalParameters(
                spread(t.windingJoulePerKelvin(), 0.15, random),
                spread(t.windingToCaseKelvinPerWatt(), 0.15, random),
                spread(t.caseJoulePerKelvin(), 0.15, random),
                spread(t.caseToAirKelvinPerWatt(), 0.15, random));
    }

    private DynamicsParameters dynamics(Random random) {
        DynamicsParameters d = nominal.dynamics();
        return new DynamicsParameters(
                spread(d.inductanceHenry(), 0.15, random),
                spread(d.inertiaKilogramMetre2(), 0.10, random),
                d.chamberInequality(),
                0);
    }

    private ProtectorParameters protector(Random random) {
        ProtectorParameters p = nominal.circuit().protector();
        double opens = p.opensKelvin() + 6 * random.nextGaussian();
        double closes = p.closesKelvin() + 8 * random.nextGaussian();
        return new ProtectorParameters(opens, Math.min(closes, opens - LEAST_HYSTERESIS_KELVIN));
    }

    /** StrictMath, so that every machine draws the same units to the bit. */
    private static double spread(double median, double logSigma, Random random) {
        return median * StrictMath.exp(logSigma * random.nextGaussian());
    }
}
