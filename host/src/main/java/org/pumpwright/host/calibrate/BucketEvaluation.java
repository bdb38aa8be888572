package org.pumpwright.host.calibrate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pumpwright.host.quantity.FlowRate;

/** Works a bucket test out. Thread-safe. */
public final class BucketEvaluation {
    /** Fewer runs say nothing about scatter, fewer flows nothing about how K goes with the flow. */
    private static final int LEAST_RUNS = 3;

    private static final int LEAST_FLOWS = 3;

    private BucketEvaluation() {}

    /**
     * The result of a test.
     *
     * @throws BucketRefused with every reason found why the test gives no K
     */
    public static BucketResult of(BucketTest test) throws BucketRefused {
        refuse(Refusals.of(test));
        List<RunResult> runs = new ArrayList<>();
        for (Run run : test.runs()) {
            runs.add(RunArithmetic.of(run, test));
        }
        refuse(mixedUnits(runs));
        List<FlowPoint> points = points(test, runs);
        FittedK fit = new FittedK(points, test.rules().level());
        KOverFlow curve = fit.fits() ? fit : new TableK(points, test.rules().level());
        SingleK single = SingleK.of(test, points, curve);
        List<PassComparison> passes = passes(points, runs);
        BucketResult bare = new BucketResult(test, runs, points, fit, curve, single, passes, List.of());
        return new BucketResult(test, runs, points, fit, curve, single, passes, Findings.of(bare));
    }

    /**
     * Whether a bench can give a K at all, before anything is caught: certificates and liquid.
     *
     * @param test its runs, if there are any, are looked at too
     * @throws BucketRefused with every reason found why it can't
     */
    public static void requireUsable(BucketTest test) throws BucketRefused {
        refuse(Refusals.of(test));
    }

    /** What one run alone gives, before the others are there to hold it against. */
    public static RunResult alone(Run run, BucketTest test) {
        return RunArithmetic.of(run, test);
    }

    private static void refuse(List<Problem> problems) throws BucketRefused {
        if (!problems.isEmpty()) {
            throw new BucketRefused(problems);
        }
    }

    /** Runs whose K is another run's times the ratio of two units. */
    private static List<Problem> mixedUnits(List<RunResult> runs) {
        List<Problem> problems = new ArrayList<>();
        List<RunResult> sorted = runs.stream()
                .sorted(Comparator.comparingDouble(run -> run.k().pulsesPerM3()))
                .toList();
        if (sorted.isEmpty()) {
            return problems;
        }
        double middle = sorted.get(sorted.size() / 2).k().pulsesPerM3();
        for (RunResult run : runs) {
            UnitMix.between(run.k().pulsesPerM3(), middle)
                    .filter(mix -> run.run().counts())
                    .ifPresent(mix -> problems.add(new Problem(
                            "run " + run.run().number() + " units",
                            String.format(
                                    Locale.ROOT,
                                    "run %d has a K %.3f times that of the others, the ratio of %s: units are mixed",
                                    run.run().number(),
                                    run.k().pulsesPerM3() / middle,
                                    mix.words()))));
        }
        return problems;
    }

    private static List<FlowPoint> points(BucketTest test, List<RunResult> runs) throws BucketRefused {
        Map<Double, List<RunResult>> flows = new TreeMap<>();
        for (RunResult run : runs) {
            if (run.run().leg() == Leg.MAIN) {
                flows.computeIfAbsent(run.run().set().m3PerSecond(), flow -> new ArrayList<>())
                        .add(run);
            }
        }
        refuse(tooFew(test, flows));
        List<FlowPoint> points = new ArrayList<>();
        for (Map.Entry<Double, List<RunResult>> flow : flows.entrySet()) {
            List<RunResult> counting = counting(flow.getValue(), true);
            FlowPoint point =
                    FlowPoint.of(test, new FlowRate(flow.getKey()), counting, counting(flow.getValue(), false));
            if (point.stated().standardShare() == 0) {
                refuse(List.of(new Problem(
                        "bench",
                        "nothing on this bench is said to be uncertain: give the scale's step and the pulses'")));
            }
            points.add(point);
        }
        return points;
    }

    private static List<RunResult> counting(List<RunResult> runs, boolean counts) {
        return runs.stream().filter(run -> run.run().counts() == counts).toList();
    }

    private static List<Problem> tooFew(BucketTest test, Map<Double, List<RunResult>> flows) {
        List<Problem> problems = new ArrayList<>();
        if (flows.size() < LEAST_FLOWS) {
            problems.add(new Problem(
                    "flows",
                    "runs at %d %s, a K over the flow needs at least %d, better 5: test at more"
                            .formatted(flows.size(), flows.size() == 1 ? "flow" : "flows", LEAST_FLOWS)));
        }
        flows.forEach((flow, runs) -> {
            int counting = counting(runs, true).size();
            if (counting < LEAST_RUNS) {
                problems.add(new Problem(
                        "run " + runs.get(0).run().number() + " and those at its flow",
                        "%d %s at %s, at least %d are needed, better 5: make more"
                                .formatted(
                                        counting,
                                        counting == 1 ? "run that counts" : "runs that count",
                                        new FlowRate(flow).print(test.units()),
                                        LEAST_RUNS)));
            }
        });
        return problems;
    }

    private static List<PassComparison> passes(List<FlowPoint> points, List<RunResult> runs) {
        List<PassComparison> passes = new ArrayList<>();
        for (Leg leg : List.of(Leg.BACK, Leg.FIRST_AGAIN)) {
            for (FlowPoint point : points) {
                Optional<PassComparison> pass = PassComparison.of(point, leg, runs);
                pass.ifPresent(passes::add);
            }
        }
        return passes;
    }
}
