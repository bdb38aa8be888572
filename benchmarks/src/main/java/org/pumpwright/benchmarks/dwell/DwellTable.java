package org.pumpwright.benchmarks.dwell;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plan.Measure;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.Settle;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.stand.StandDescription;

/** Prints the tables of the page about dwells. */
public final class DwellTable {
    private static final int UNITS = 200;
    private static final Settle SOON = new Settle(1, 10, 0.005);
    private static final Settle USUAL = new Settle(2, 10, 0.005);

    private DwellTable() {}

    private record Way(String words, List<DwellRun> runs) {}

    /**
     * Measures and prints; some minutes.
     *
     * @param arguments the project's folder, then if wanted the number of units
     */
    public static void main(String[] arguments) throws Exception {
        Shelf shelf = new Shelf(Path.of(arguments[0], "fixtures"));
        int count = arguments.length > 1 ? Integer.parseInt(arguments[1]) : UNITS;
        Plan quick = shelf.plan("quick-12v-pump");
        List<UnitMix.Unit> units = UnitMix.draw(count);
        StandDescription stand = shelf.stand("simulated");
        HealthyCurve curve = shelf.curves().stream()
                .filter(each -> each.conditions().model().equals("demo-pump"))
                .findFirst()
                .orElseThrow();
        Plan manyPulses = with(quick, SOON, new Measure(2, 200, 0.002, 12));
        List<Way> ways = Stream.of(
                        way("shipped, " + quick.label() + ": " + rule(quick), units, quick, stand, curve),
                        way("fixed 10 s", units, with(quick, USUAL, new Measure(10, 1, 1, 10)), stand, curve),
                        way("200 pulses: " + rule(manyPulses), units, manyPulses, stand, curve),
                        way("fixed 1 s", units, with(quick, SOON, new Measure(1, 1, 1, 1)), stand, curve))
                .toList();
        print(ways);
    }

    private static Sweep sweep(Plan plan) {
        return plan.steps().stream()
                .filter(Sweep.class::isInstance)
                .map(Sweep.class::cast)
                .findFirst()
                .orElseThrow();
    }

    /** The plan's sweep alone, with these rules. */
    private static Plan with(Plan plan, Settle settle, Measure measure) {
        Sweep sweep = sweep(plan);
        return new Plan(
                plan.id(),
                plan.version(),
                plan.title(),
                plan.kind(),
                plan.needsReliefCheck(),
                plan.wiring(),
                List.of(new Sweep(sweep.name(), sweep.points(), sweep.rampSeconds(), settle, measure)),
                plan.judged(),
                plan.stop());
    }

    private static String rule(Plan plan) {
        Measure m = sweep(plan).measure();
        Settle s = sweep(plan).settle();
        return String.format(
                Locale.ROOT,
                "settle %.1f s and up; measure %.1f s, %d pulses and up, until u is %.2f %%, at most %.0f s",
                s.leastSeconds(),
                m.leastSeconds(),
                m.leastPulses(),
                100 * m.flowUncertaintyShare(),
                m.mostSeconds());
    }

    private static Way way(
            String words, List<UnitMix.Unit> units, Plan plan, StandDescription stand, HealthyCurve curve) {
        return new Way(
                words,
                units.parallelStream()
                        .map(unit -> DwellRun.of(unit, plan, stand, curve))
                        .toList());
    }

    private static void print(List<Way> ways) {
        int all = ways.get(0).runs().size();
        List<Integer> both = IntStream.range(0, all)
                .filter(i -> ways.stream().allMatch(way -> way.runs().get(i).completed()))
                .boxed()
                .toList();
        System.out.printf(
                Locale.ROOT, "%d units, %d of which went through every point in all ways.%n%n", all, both.size());
        System.out.println("| way | bench time, mean | median | longest |");
        System.out.println("| --- | --- | --- | --- |");
        for (Way way : ways) {
            double[] seconds = both.stream()
                    .mapToDouble(i -> way.runs().get(i).benchSeconds())
                    .sorted()
                    .toArray();
            row(way.words(), "%.1f s", mean(seconds), at(seconds, 0.5), at(seconds, 1));
        }
        System.out.println();
        System.out.println(
                "| way | set point | u from pulses, median | 95 % of units below | u in all, median | 95 % below"
                        + " | off the steady state, median | 5 % | 95 % |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        for (Way way : ways) {
            for (int percent : percents(way)) {
                printPoint(way, both, percent);
            }
        }
        System.out.println();
        printVerdicts(ways);
    }

    private static List<Integer> percents(Way way) {
        return way.runs().stream()
                .flatMap(run -> run.flows().stream())
                .map(DwellRun.Flow::percent)
                .distinct()
                .sorted()
                .toList();
    }

    private static void printPoint(Way way, List<Integer> both, int percent) {
        List<DwellRun> runs = both.stream().map(way.runs()::get).toList();
        double[] scatter = shares(runs, run -> true, percent, DwellRun.Flow::scatter);
        double[] total = shares(runs, run -> true, percent, DwellRun.Flow::total);
        double[] off = shares(runs, run -> run.unit().becomesSteady(), percent, DwellRun.Flow::off);
        row(
                way.words().replaceFirst(":.*", "") + " | " + percent + " %",
                "%.3f %%",
                at(scatter, 0.5),
                at(scatter, 0.95),
                at(total, 0.5),
                at(total, 0.95),
                at(off, 0.5),
                at(off, 0.05),
                at(off, 0.95));
    }

    /** In percent, sorted. */
    private static double[] shares(
            List<DwellRun> runs, Predicate<DwellRun> which, int percent, ToDoubleFunction<DwellRun.Flow> of) {
        return runs.stream()
                .filter(which)
                .flatMap(run -> run.flows().stream())
                .filter(flow -> flow.percent() == percent)
                .mapToDouble(flow -> 100 * of.applyAsDouble(flow))
                .sorted()
                .toArray();
    }

    private static void printVerdicts(List<Way> ways) {
        System.out.println(
                "| way | healthy units: PASS | FAIL | neither | units with a fault: PASS | FAIL | neither | other"
                        + " verdict than the second way |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- |");
        for (Way way : ways) {
            List<String> cells = new ArrayList<>();
            for (boolean healthy : new boolean[] {true, false}) {
                List<Verdict> verdicts = way.runs().stream()
                        .filter(run -> (run.unit().fault() == PumpFault.HEALTHY) == healthy)
                        .map(DwellRun::verdict)
                        .toList();
                long pass = verdicts.stream().filter(v -> v == Verdict.PASS).count();
                long fail = verdicts.stream().filter(v -> v == Verdict.FAIL).count();
                cells.add("%d | %d | %d".formatted(pass, fail, verdicts.size() - pass - fail));
            }
            List<DwellRun> second = ways.get(1).runs();
            long other = IntStream.range(0, second.size())
                    .filter(i -> way.runs().get(i).verdict() != second.get(i).verdict())
                    .count();
            System.out.println("| " + way.words().replaceFirst(":.*", "") + " | " + String.join(" | ", cells) + " | "
                    + other + " |");
        }
    }

    private static void row(String words, String format, double... values) {
        StringBuilder row = new StringBuilder("| " + words + " |");
        for (double value : values) {
            row.append(' ').append(String.format(Locale.ROOT, format, value)).append(" |");
        }
        System.out.println(row);
    }

    private static double mean(double[] values) {
        return java.util.Arrays.stream(values).average().orElse(Double.NaN);
    }

    private static double at(double[] sorted, double share) {
        return sorted.length == 0 ? Double.NaN : sorted[(int) Math.round(share * (sorted.length - 1))];
    }
}
