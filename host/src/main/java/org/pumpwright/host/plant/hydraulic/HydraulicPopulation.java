package org.pumpwright.host.plant.hydraulic;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.pumpwright.host.plant.Streams;

/**
 * Healthy hydraulic pumps that differ as units of one model do: each parameter log-normal about the healthy value. The
 * spreads are assumed (docs/metrology/plant-other-units.md); the stand is the same for all. Unit {@code i} of a seed is
 * always the same unit. Thread-safe.
 */
public final class HydraulicPopulation {

    private static final double BEST_EFFICIENCY = 0.98;

    private final long seed;

    /** The population of a seed. */
    public HydraulicPopulation(long seed) {
        this.seed = seed;
    }

    /**
     * One unit with a positive-displacement head.
     *
     * @throws IllegalArgumentException when the number is negative
     */
    public HydraulicParameters unit(int number) {
        if (number < 0) {
            throw new IllegalArgumentException("unit number " + number + " is below 0");
        }
        Random random = Streams.stream(seed, number);
        HydraulicParameters p = HydraulicParameters.healthy();
        return p.withCoil(coil(p.coil(), random))
                .withSpool(spool(p.spool(), random))
                .withMotor(motor(p.motor(), random))
                .withHead(head(random));
    }

    /** The first units of the population. */
    public List<HydraulicParameters> units(int count) {
        return IntStream.range(0, count).mapToObj(this::unit).toList();
    }

    private static CoilParameters coil(CoilParameters c, Random random) {
        return new CoilParameters(
                spread(c.ohmsAt20Celsius(), 0.03, random),
                c.seriesOhms(),
                c.forceShare(),
                spread(c.henry(), 0.15, random),
                spread(c.kelvinPerWatt(), 0.15, random),
                spread(c.warmingSeconds(), 0.15, random),
                c.startRiseKelvin());
    }

    private static SpoolParameters spool(SpoolParameters v, Random random) {
        return new SpoolParameters(
                spread(v.deadBandAmps(), 0.10, random),
                spread(v.fullAmps(), 0.04, random),
                spread(v.frictionShare(), 0.25, random),
                v.criticalDither(),
                v.stickSlipShare(),
                spread(v.flowExponent(), 0.06, random),
                spread(v.ratedOilM3PerSecond(), 0.04, random),
                v.leastOpening(),
                v.mostOpening(),
                v.compensatorStuckShare(),
                spread(v.responseSeconds(), 0.15, random));
    }

    private static OilMotorParameters motor(OilMotorParameters m, Random random) {
        return new OilMotorParameters(
                spread(m.displacementM3PerRadian(), 0.015, random),
                spread(m.leakM3PerSecondPascal(), 0.40, random),
                Math.min(BEST_EFFICIENCY, spread(m.torqueEfficiency(), 0.02, random)),
                spread(m.frictionNewtonMetre(), 0.25, random),
                m.reliefPascal(),
                m.coupled());
    }

    private static DisplacementHead head(Random random) {
        DisplacementHead h = DisplacementHead.healthy();
        return new DisplacementHead(
                spread(h.displacementM3PerRadian(), 0.015, random),
                spread(h.complianceLossPerPascal(), 0.15, random),
                spread(h.slipM3PerSecondPascal(), 0.35, random),
                spread(h.backflowM3PerRadian(), 0.25, random),
                Math.min(BEST_EFFICIENCY, spread(h.torqueEfficiency(), 0.02, random)),
                h.chambers(),
                0,
                0);
    }

    /** StrictMath, so that every machine draws the same units to the bit. */
    private static double spread(double median, double logSigma, Random random) {
        return median * StrictMath.exp(logSigma * random.nextGaussian());
    }
}
