package org.pumpwright.benchmarks.signal;

import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import org.hipparchus.distribution.continuous.TDistribution;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.CountedFrequency;
import org.pumpwright.host.signal.PulseFrequency;
import org.pumpwright.host.signal.PulseTrain;

/**
 * Variance of four ways of finding a frequency beside the Cramer-Rao bound for white edge jitter, and how often the stated
 * 95 % interval holds the truth. Every train has its own phase, drawn evenly over one pulse.
 */
final class FrequencyTable {
    private static final int[] EDGES = {10, 30, 100, 300, 1000, 3000, 10_000};
    private static final double HERTZ = 103;
    private static final double JITTER_SHARE = 0.01;
    private static final double SAMPLE_SECONDS = 0.02;
    private static final int MOST_TRAINS = 20_000;
    private static final int LEAST_TRAINS = 2000;
    private static final int[] SLOW_EDGES = {12, 30, 60, 200, 500, 2000};
    private static final int SLOW_TRAINS = 2000;
    private static final int EDGES_IN_ALL = 20_000_000;

    /** Sum of squared errors of one way, and how many of its intervals held. */
    private static final class Tally {
        private double squares;
        private int trains;
        private int held;

        void add(Uncertain found) {
            double error = found.value() - HERTZ;
            squares += error * error;
            trains++;
            double dof = Math.min(found.degreesOfFreedom(), 1e6);
            double t = new TDistribution(dof).inverseCumulativeProbability(0.975);
            held += Math.abs(error) <= t * found.standardUncertainty() ? 1 : 0;
        }

        double variance() {
            return squares / trains;
        }

        double coverage() {
            return 100.0 * held / trains;
        }
    }

    private FrequencyTable() {}

    /** Measures and prints. */
    static void print() {
        System.out.printf(Locale.ROOT, "%nvariance of the frequency over the Cramer-Rao bound of all edges,%n");
        System.out.printf(
                Locale.ROOT,
                "white jitter of %.0f %% of the interval, %.0f Hz, samples every 20 ms; coverage of 95 %% intervals%n%n",
                JITTER_SHARE * 100,
                HERTZ);
        System.out.printf(
                Locale.ROOT,
                "%7s %7s | %10s %8s | %10s %10s %8s | %10s | %12s | %10s%n",
                "edges",
                "trains",
                "all edges",
                "holds %",
                "samples",
                "own bound",
                "holds %",
                "reciprocal",
                "gate count",
                "patterned");
        for (int edges : EDGES) {
            printRow(edges);
        }
    }

    private static void printRow(int edges) {
        int trains = Math.max(LEAST_TRAINS, Math.min(MOST_TRAINS, EDGES_IN_ALL / edges));
        RandomGenerator random = new SplittableRandom(edges);
        Tally all = new Tally();
        Tally pairs = new Tally();
        Tally reciprocal = new Tally();
        Tally gate = new Tally();
        Tally patterned = new Tally();
        double pairBound = 0;
        double jitter = JITTER_SHARE / HERTZ;
        for (int i = 0; i < trains; i++) {
            double[] seconds = edges(edges, random, blade -> 0);
            PulseTrain every = train(seconds, 0);
            PulseTrain sampled = train(seconds, SAMPLE_SECONDS);
            all.add(PulseFrequency.hertz(every, edges / HERTZ));
            if (sampled.size() >= 3) {
                pairs.add(PulseFrequency.hertz(sampled, edges / HERTZ));
                pairBound += bound(sampled.numbers(), jitter);
            }
            reciprocal.add(CountedFrequency.reciprocal(every, jitter));
            double pulsesInGate = edges - 1 + random.nextDouble();
            long counted = (long) Math.floor(pulsesInGate + random.nextDouble());
            gate.add(CountedFrequency.overGate(counted, pulsesInGate / HERTZ));
            double[] marked = edges(edges, random, blade -> jitter * 2 * (blade % 3 - 1));
            patterned.add(PulseFrequency.hertz(train(marked, 0), edges / HERTZ, 6));
        }
        double bound = HERTZ * HERTZ * HERTZ * HERTZ * 12 * jitter * jitter / (edges * ((double) edges * edges - 1));
        System.out.printf(
                Locale.ROOT,
                "%7d %7d | %10.3f %8.1f | %10.3f %10.3f %8.1f | %10.1f | %12.0f | %10.3f%n",
                edges,
                trains,
                all.variance() / bound,
                all.coverage(),
                pairs.variance() / bound,
                pairs.variance() / (pairBound / pairs.trains),
                pairs.coverage(),
                reciprocal.variance() / bound,
                gate.variance() / bound,
                patterned.variance() / bound);
    }

    private static double bound(double[] numbers, double jitter) {
        double mean = 0;
        for (double number : numbers) {
            mean += number / numbers.length;
        }
        double squares = 0;
        for (double number : numbers) {
            squares += (number - mean) * (number - mean);
        }
        return Math.pow(HERTZ, 4) * jitter * jitter / squares;
    }

    private static double[] edges(int edges, RandomGenerator random, ToDoubleFunction<Integer> blade) {
        double[] seconds = new double[edges];
        double phase = 1 + random.nextDouble();
        for (int i = 0; i < edges; i++) {
            seconds[i] = (phase + i + JITTER_SHARE * random.nextGaussian()) / HERTZ + blade.applyAsDouble(i % 6);
        }
        return seconds;
    }

    /** What samples say; with a period of 0 one sample after each edge. */
    private static PulseTrain train(double[] seconds, double period) {
        double last = seconds[seconds.length - 1];
        int samples = period == 0 ? seconds.length + 1 : (int) Math.ceil(last / period) + 1;
        long[] edges = new long[samples];
        long[] nanos = new long[samples];
        int passed = 0;
        for (int i = 0; i < samples; i++) {
            if (period == 0) {
                passed = i;
            }
            while (period > 0 && passed < seconds.length && seconds[passed] <= i * period) {
                passed++;
            }
            edges[i] = passed;
            nanos[i] = passed == 0 ? 0 : Math.round(seconds[passed - 1] * 1e9);
        }
        return PulseTrain.of(edges, nanos);
    }

    /** How often stated 95 % intervals hold the long-run frequency where the flow itself wanders. */
    static void printSlow() {
        System.out.printf(Locale.ROOT, "%nhow often 95 %% intervals hold, %.0f Hz, jitter of 1 %%%n%n", HERTZ);
        System.out.printf(Locale.ROOT, "%-34s", "edges");
        for (int edges : SLOW_EDGES) {
            System.out.printf(Locale.ROOT, "%8d", edges);
        }
        System.out.println();
        for (Flow flow : Flow.values()) {
            System.out.printf(Locale.ROOT, "%-34s", flow.words);
            for (int edges : SLOW_EDGES) {
                System.out.printf(Locale.ROOT, "%8.1f", slow(flow, edges).coverage());
            }
            System.out.println();
        }
    }

    private static Tally slow(Flow flow, int edges) {
        RandomGenerator random = new SplittableRandom(edges);
        Tally tally = new Tally();
        for (int i = 0; i < SLOW_TRAINS; i++) {
            tally.add(PulseFrequency.hertz(train(flow.edges(edges, random), 0), edges / HERTZ));
        }
        return tally;
    }

    /** How the flow behaves beside the jitter. */
    private enum Flow {
        EVEN("even"),
        FAINT_WALK("each interval 0.2 % by itself"),
        WALK("each interval 5 % by itself"),
        AIR("air: 10 %, correlation 0.88"),
        SURGE("surge: 8 %, 0.3 to 2.8 Hz");

        private final String words;

        Flow(String words) {
            this.words = words;
        }

        double[] edges(int edges, RandomGenerator random) {
            double[] seconds = new double[edges];
            double air = random.nextGaussian();
            double phase = 2 * Math.PI * random.nextDouble();
            double surgeHertz = random.nextDouble(0.3, 2.8);
            double intervals = 1;
            for (int i = 0; i < edges; i++) {
                air = 0.88 * air + Math.sqrt(1 - 0.88 * 0.88) * random.nextGaussian();
                intervals += 1
                        + switch (this) {
                            case EVEN -> 0;
                            case FAINT_WALK -> 0.002 * random.nextGaussian();
                            case WALK -> 0.05 * random.nextGaussian();
                            case AIR -> 0.1 * air;
                            case SURGE -> 0.08 * Math.sin(phase + 2 * Math.PI * surgeHertz * i / HERTZ);
                        };
                seconds[i] = (intervals + JITTER_SHARE * random.nextGaussian()) / HERTZ;
            }
            return seconds;
        }
    }
}
