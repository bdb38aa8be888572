package org.pumpwright.benchmarks.judgement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.plant.Streams;

/**
 * Each fault and severity against healthy by the test that knows both distributions (J. Neyman and E. S. Pearson, Philosophical
 * Transactions A 231 (1933) 289): no test with as few false alarms finds more. It needs to be told which fault it looks for, and
 * how much of it. Thread-safe.
 *
 * @param rows one for each fault and severity that has a steady state
 * @param falseAlarms share of healthy units that each test was set to flag
 */
record DetectionPart(List<Row> rows, double falseAlarms) {
    /** Faults of the unit that change the steady state from the beginning of the run to its end. */
    private static final Set<PumpFault> STEADY = EnumSet.of(
            PumpFault.SLIP,
            PumpFault.DEAD_CHAMBER,
            PumpFault.TORN_DIAPHRAGM,
            PumpFault.BYPASS_LOW,
            PumpFault.DRAG,
            PumpFault.WEAK_MAGNETS,
            PumpFault.BRUSH,
            PumpFault.SHORTED_TURNS,
            PumpFault.STRAINER,
            PumpFault.SHORT_TO_CASE);

    private static final int DRAWS = 400;
    private static final int HEALTHY_DRAWS = 20_000;
    private static final int FIRST_UNIT = 5_000_000;
    private static final long NOISE_STREAM = -503;

    /** One fault and severity. */
    record Row(FaultPart.Cell cell, Share flagged) {
        Severity severity() {
            return cell.severity();
        }
    }

    static DetectionPart of(Worlds worlds, Doubts doubts, Noise noise, FaultPart faults, double falseAlarms) {
        List<double[]> shares = faults.cells().stream()
                .flatMap(cell -> cell.judged().stream())
                .filter(j -> !j.readings().isEmpty())
                .map(j -> j.readings().stream()
                        .mapToDouble(Judgement.Reading::share)
                        .toArray())
                .toList();
        RealMatrix usual = noise.covariance(Normal.of(shares).mean().toArray());
        List<Row> rows = faults.cells().stream()
                .filter(cell -> !cell.pair() && STEADY.contains(cell.fault()))
                .map(cell -> row(worlds, doubts, usual, cell, falseAlarms))
                .toList();
        return new DetectionPart(rows, falseAlarms);
    }

    private static Row row(Worlds worlds, Doubts doubts, RealMatrix noise, FaultPart.Cell cell, double falseAlarms) {
        List<Test> tests = worlds.all().parallelStream()
                .map(world -> Test.of(world, new Truth(world.curve(), doubts), noise, cell, falseAlarms))
                .toList();
        long flagged = IntStream.range(0, cell.judged().size())
                .filter(i -> {
                    Judgement judgement = cell.judged().get(i);
                    return judgement.readings().isEmpty()
                            || test(tests, judgement).flags(judgement);
                })
                .count();
        return new Row(cell, new Share(flagged, cell.judged().size()));
    }

    private static Test test(List<Test> tests, Judgement judgement) {
        return tests.stream()
                .filter(test -> test.world().curve() == judgement.curve())
                .findFirst()
                .orElseThrow();
    }

    /** A threshold on the ratio of the likelihoods. */
    private record Test(World world, Normal healthy, Normal faulty, double threshold) {
        static Test of(World world, Truth truth, RealMatrix noise, FaultPart.Cell cell, double falseAlarms) {
            Normal healthy = Prior.healthy(world, truth).with(noise);
            List<double[]> draws = new ArrayList<>();
            for (int i = 0; i < DRAWS; i++) {
                draws.add(truth.deviations(world.faulty(FIRST_UNIT + i, cell.mix())));
            }
            Normal faulty = Normal.of(draws).with(noise);
            Random random = Streams.stream(world.number(), NOISE_STREAM);
            RealMatrix root = healthy.root();
            double[] ratios = IntStream.range(0, HEALTHY_DRAWS)
                    .mapToDouble(i -> ratio(healthy, faulty, healthy.draw(root, random)))
                    .toArray();
            Arrays.sort(ratios);
            int place = (int) Math.floor(HEALTHY_DRAWS * (1 - falseAlarms));
            return new Test(world, healthy, faulty, ratios[Math.min(HEALTHY_DRAWS - 1, place)]);
        }

        private static double ratio(Normal healthy, Normal faulty, RealVector at) {
            return faulty.logDensity(at) - healthy.logDensity(at);
        }

        boolean flags(Judgement judgement) {
            RealVector at = MatrixUtils.createRealVector(judgement.readings().stream()
                    .mapToDouble(Judgement.Reading::deviation)
                    .toArray());
            return ratio(healthy, faulty, at) > threshold;
        }
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (Row row : rows) {
            lines.add(String.format(
                    Locale.ROOT,
                    "| `%s` | %s | %s | %s |",
                    row.cell().mix(),
                    row.cell().share(Verdict.FAIL).percent(),
                    row.cell().share(Verdict.PASS).percent(),
                    row.flagged().percent()));
        }
        for (Severity severity : Severity.values()) {
            lines.add(total(severity));
        }
        return lines;
    }

    private String total(Severity severity) {
        List<Row> of = rows.stream().filter(row -> row.severity() == severity).toList();
        long units = of.stream().mapToLong(row -> row.flagged().of()).sum();
        long fail = of.stream()
                .mapToLong(row -> row.cell().share(Verdict.FAIL).hits())
                .sum();
        long pass = of.stream()
                .mapToLong(row -> row.cell().share(Verdict.PASS).hits())
                .sum();
        long flagged = of.stream().mapToLong(row -> row.flagged().hits()).sum();
        return "| **all %s** | %s | %s | %s |"
                .formatted(
                        severity.name().toLowerCase(Locale.ROOT),
                        new Share(fail, units).percent(),
                        new Share(pass, units).percent(),
                        new Share(flagged, units).percent());
    }

    static String head() {
        return """
                | fault | Pumpwright: FAIL % | PASS % | flagged by the test that knows the fault % |
                | --- | --- | --- | --- |""";
    }
}
