package org.pumpwright.host.plant.harness;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.pumpwright.host.plant.Streams;

/**
 * Healthy harnesses that differ as ones of one model do: lengths 2 %, joints 30 % (one standard deviation, log-normal,
 * assumed). Unit {@code i} of a seed is always the same one. Thread-safe.
 */
public final class HarnessPopulation {

    private final long seed;

    /** The population of a seed. */
    public HarnessPopulation(long seed) {
        this.seed = seed;
    }

    /**
     * One harness.
     *
     * @throws IllegalArgumentException when the number is negative
     */
    public HarnessParameters unit(int number) {
        if (number < 0) {
            throw new IllegalArgumentException("unit number " + number + " is below 0");
        }
        Random random = Streams.stream(seed, number);
        HarnessParameters p = HarnessParameters.healthy();
        List<Element> supply = side(p.supplySide(), random);
        return p.withSides(supply, side(p.groundSide(), random));
    }

    /** The first harnesses of the population. */
    public List<HarnessParameters> units(int count) {
        return IntStream.range(0, count).mapToObj(this::unit).toList();
    }

    private static List<Element> side(List<Element> side, Random random) {
        return side.stream().map(element -> spread(element, random)).toList();
    }

    private static Element spread(Element element, Random random) {
        if (element instanceof WireRun run) {
            return new WireRun(run.name(), run.gauge(), spread(run.metres(), 0.02, random), run.kelvin());
        }
        return Joint.clean(element.name(), spread(element.smallCurrentOhms(), 0.30, random));
    }

    /** StrictMath, so that every machine draws the same units to the bit. */
    private static double spread(double median, double logSigma, Random random) {
        return median * StrictMath.exp(logSigma * random.nextGaussian());
    }
}
