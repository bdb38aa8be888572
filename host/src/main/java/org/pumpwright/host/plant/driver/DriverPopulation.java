package org.pumpwright.host.plant.driver;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.pumpwright.host.plant.Streams;

/**
 * Healthy modules that differ as units of one model do: on-resistance 10 %, limit 8 %, frequency 1 %, dead time 20 %,
 * own current 25 %, duty 0.3 % absolute (one standard deviation; assumed). Unit {@code i} of a seed is always the same
 * unit. Thread-safe.
 */
public final class DriverPopulation {

    private final long seed;

    /** The population of a seed. */
    public DriverPopulation(long seed) {
        this.seed = seed;
    }

    /**
     * One module.
     *
     * @throws IllegalArgumentException when the number is negative
     */
    public DriverParameters unit(int number) {
        if (number < 0) {
            throw new IllegalArgumentException("unit number " + number + " is below 0");
        }
        Random random = Streams.stream(seed, number);
        DriverParameters p = DriverParameters.healthy();
        OutputStage output = p.output().withOnOhms(spread(p.output().onOhms(), 0.10, random));
        return p.withOutput(output)
                .withLogic(logic(p.logic(), random))
                .withLimit(spread(p.limitAmps(), 0.08, random), p.foldbackShare())
                .withQuiescent(spread(p.quiescentAmps(), 0.25, random));
    }

    /** The first modules of the population. */
    public List<DriverParameters> units(int count) {
        return IntStream.range(0, count).mapToObj(this::unit).toList();
    }

    private static DriverLogic logic(DriverLogic l, Random random) {
        return new DriverLogic(
                spread(l.frequencyHertz(), 0.01, random),
                0.003 * random.nextGaussian(),
                l.dutyBend(),
                spread(l.deadSeconds(), 0.20, random),
                l.softStartSeconds(),
                l.brownOutVolts(),
                l.restartSeconds(),
                l.commandHeard());
    }

    /** StrictMath, so that every machine draws the same units to the bit. */
    private static double spread(double median, double logSigma, Random random) {
        return median * StrictMath.exp(logSigma * random.nextGaussian());
    }
}
