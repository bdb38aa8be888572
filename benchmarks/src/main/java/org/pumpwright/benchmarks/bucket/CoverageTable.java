package org.pumpwright.benchmarks.bucket;

import java.util.Locale;
import java.util.Map;
import org.pumpwright.host.calibrate.BucketRefused;
import org.pumpwright.host.calibrate.simulated.Benches;
import org.pumpwright.host.calibrate.simulated.Coverage;
import org.pumpwright.host.calibrate.simulated.MadeUpTest;

/** Prints the coverage table of the page about the bucket test. */
public final class CoverageTable {
    private static final int TESTS = 2000;
    private static final long SEED = 20_260_302;
    private static final double NORMAL_95 = 1.959964;

    private CoverageTable() {}

    /**
     * Measures and prints; some seconds.
     *
     * @param arguments if wanted the number of tests of each method
     */
    public static void main(String[] arguments) throws BucketRefused {
        int tests = arguments.length > 0 ? Integer.parseInt(arguments[0]) : TESTS;
        System.out.println("| method | interval of | holds the truth | Wilson 95 % | mean U |");
        System.out.println("| --- | --- | --- | --- | --- |");
        for (Map.Entry<String, MadeUpTest> each : Benches.all().entrySet()) {
            print(each.getKey(), Coverage.of(each.getValue(), tests, SEED));
        }
    }

    private static void print(String method, Coverage coverage) {
        coverage.counts()
                .forEach((what, count) -> System.out.printf(
                        Locale.ROOT,
                        "| %s | %s | %.1f %% of %d | %.1f to %.1f %% | %.2f %% |%n",
                        method,
                        what,
                        100 * count.share(),
                        count.all(),
                        100 * wilson(count, -1),
                        100 * wilson(count, 1),
                        100 * count.expandedShare()));
        System.out.printf(Locale.ROOT, "| %s | table instead of the law | %d tests | | |%n", method, coverage.tables());
    }

    /** One end of the interval of a share by E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209. */
    private static double wilson(Coverage.Count count, int side) {
        double n = count.all();
        double z2 = NORMAL_95 * NORMAL_95;
        double p = count.share();
        double root = NORMAL_95 * Math.sqrt(p * (1 - p) / n + z2 / (4 * n * n));
        return (p + z2 / (2 * n) + side * root) / (1 + z2 / n);
    }
}
