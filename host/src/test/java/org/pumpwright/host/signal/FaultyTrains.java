package org.pumpwright.host.signal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Pulse trains of healthy and moderately faulty meters, everything drawn: 4 to 8 blades, 300 to 3000 intervals, 10 to
 * 300 Hz, edge jitter 1 to 2 %, blade pattern 1 to 3 % of the interval, and the fault's own figures. The signatures are
 * common practice, no source. Same source of chance, same train.
 */
public final class FaultyTrains {
    private static final double LEAST_HERTZ = 10;
    private static final double MOST_HERTZ = 300;
    private static final int LEAST_INTERVALS = 300;
    private static final int MOST_INTERVALS = 3000;

    /** Edges of one train and the drive that ran beside it. */
    public record Drawn(List<Double> edges, double driveHertz) {
        public double[] edgeSeconds() {
            return edges.stream().mapToDouble(e -> e).toArray();
        }

        public double[] intervals() {
            double[] seconds = edgeSeconds();
            double[] intervals = new double[seconds.length - 1];
            Arrays.setAll(intervals, i -> seconds[i + 1] - seconds[i]);
            return intervals;
        }
    }

    /** The rotor of one train. */
    private record Rotor(double hertz, int intervals, double jitter, double[] pattern) {
        static Rotor draw(RandomGenerator random, double jitterTimes, double patternTimes) {
            double hertz = LEAST_HERTZ * Math.pow(MOST_HERTZ / LEAST_HERTZ, random.nextDouble());
            int intervals = random.nextInt(LEAST_INTERVALS, MOST_INTERVALS + 1);
            double jitter = random.nextDouble(0.01, 0.02) * jitterTimes;
            double[] pattern = new double[random.nextInt(4, 9)];
            Arrays.setAll(pattern, i -> random.nextGaussian());
            double mean = Arrays.stream(pattern).average().orElseThrow();
            double rms = Math.sqrt(Arrays.stream(pattern)
                    .map(p -> (p - mean) * (p - mean))
                    .average()
                    .orElseThrow());
            double size = random.nextDouble(0.01, 0.03) * patternTimes;
            return new Rotor(
                    hertz,
                    intervals,
                    jitter,
                    Arrays.stream(pattern).map(p -> (p - mean) / rms * size).toArray());
        }
    }

    private FaultyTrains() {}

    /** One train that shows this. */
    public static Drawn draw(PulseFault fault, RandomGenerator random) {
        double driveHertz = 100 * Math.pow(10, random.nextDouble());
        double[] edges = switch (fault) {
            case HEALTHY -> edges(Rotor.draw(random, 1, 1), random);
            case MISSING_PULSES -> missing(edges(Rotor.draw(random, 1, 1), random), random);
            case DOUBLE_PULSES -> doubled(edges(Rotor.draw(random, 1, 1), random), random);
            case BLADE_LOST -> bladeLost(random);
            case AIR_SLUGS -> air(random);
            case SURGE -> surge(random);
            case WORN_BEARING -> edges(Rotor.draw(random, random.nextDouble(3, 5), random.nextDouble(2, 3)), random);
            case INTERFERENCE -> interference(driveHertz, random);
        };
        return new Drawn(Arrays.stream(edges).boxed().toList(), driveHertz);
    }

    private static double[] edges(Rotor rotor, RandomGenerator random) {
        double[] speeds = new double[rotor.intervals + 1];
        Arrays.fill(speeds, 1);
        return edges(rotor, speeds, random);
    }

    /** Edges of a rotor whose flow at each interval is this share of its mean. */
    private static double[] edges(Rotor rotor, double[] speeds, RandomGenerator random) {
        double[] edges = new double[rotor.intervals + 1];
        double time = random.nextDouble();
        for (int i = 0; i < edges.length; i++) {
            time += (1 + rotor.pattern[i % rotor.pattern.length]) / rotor.hertz / speeds[i];
            edges[i] = time + rotor.jitter * random.nextGaussian() / rotor.hertz;
        }
        Arrays.sort(edges);
        return edges;
    }

    private static double[] missing(double[] edges, RandomGenerator random) {
        double share = random.nextDouble(0.025, 0.04);
        return Arrays.stream(edges).filter(e -> random.nextDouble() >= share).toArray();
    }

    /** Half of the draws bounce soon after the true edge, half are hit anywhere. */
    private static double[] doubled(double[] edges, RandomGenerator random) {
        double share = random.nextDouble(0.025, 0.04);
        double reach = random.nextBoolean() ? 0.2 : 1;
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < edges.length; i++) {
            all.add(edges[i]);
            if (i + 1 < edges.length && random.nextDouble() < share) {
                all.add(edges[i] + (edges[i + 1] - edges[i]) * reach * random.nextDouble(0.02, 0.98));
            }
        }
        return all.stream().mapToDouble(e -> e).toArray();
    }

    private static double[] bladeLost(RandomGenerator random) {
        Rotor rotor = Rotor.draw(random, 1, 1);
        double[] edges = edges(rotor, random);
        int lost = random.nextInt(rotor.pattern.length);
        List<Double> kept = new ArrayList<>();
        for (int i = 0; i < edges.length; i++) {
            if (i % rotor.pattern.length != lost) {
                kept.add(edges[i]);
            }
        }
        return kept.stream().mapToDouble(e -> e).toArray();
    }

    /** Slugs that speed the rotor up by 15 to 30 %, of random length and at random, the rotor following after a while. */
    private static double[] air(RandomGenerator random) {
        Rotor rotor = Rotor.draw(random, 1, 1);
        double faster = random.nextDouble(0.15, 0.3);
        double slug = random.nextDouble(6, 25);
        double gap = slug * random.nextDouble(1, 3);
        double follow = 1 / random.nextDouble(1.5, 4);
        double[] speeds = new double[rotor.intervals + 1];
        boolean inSlug = false;
        double speed = 1;
        for (int i = 0; i < speeds.length; i++) {
            inSlug = random.nextDouble() < 1 / (inSlug ? slug : gap) ? !inSlug : inSlug;
            speed += follow * ((inSlug ? 1 + faster : 1) - speed);
            speeds[i] = speed;
        }
        return edges(rotor, speeds, random);
    }

    /** 6 to 12 % of amplitude at 0.3 to 3 Hz, at least two cycles of at least twelve pulses in the train. */
    private static double[] surge(RandomGenerator random) {
        Rotor rotor = Rotor.draw(random, 1, 1);
        double amplitude = random.nextDouble(0.06, 0.12);
        double least = Math.max(0.3, 2 * rotor.hertz / rotor.intervals);
        double most = Math.max(least, Math.min(3, rotor.hertz / 12));
        double hertz = least + (most - least) * random.nextDouble();
        double phase = random.nextDouble(2 * Math.PI);
        double[] speeds = new double[rotor.intervals + 1];
        Arrays.setAll(speeds, i -> 1 + amplitude * Math.sin(phase + 2 * Math.PI * hertz * i / rotor.hertz));
        return edges(rotor, speeds, random);
    }

    /** One edge each, two each or one in two of the drive's periods, some of them not caught. */
    private static double[] interference(double driveHertz, RandomGenerator random) {
        double hertz = driveHertz * new double[] {0.5, 1, 2}[random.nextInt(3)];
        double jitter = random.nextDouble(0.002, 0.02);
        double lost = random.nextDouble(0.05);
        int count = random.nextInt(LEAST_INTERVALS, MOST_INTERVALS + 1);
        List<Double> edges = new ArrayList<>();
        for (int i = 0; i <= count; i++) {
            if (random.nextDouble() >= lost) {
                edges.add((i + 0.3 + jitter * random.nextGaussian()) / hertz);
            }
        }
        return edges.stream().mapToDouble(e -> e).toArray();
    }
}
