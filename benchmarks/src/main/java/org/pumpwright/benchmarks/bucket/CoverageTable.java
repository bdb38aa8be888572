package org.pumpwright.benchmarks.bucket;

import java.util.Locale;
import java.util.Map;
import org.pumpwright.host.calibrate.BucketRefused;
import org.pumpwright.host.calibrate.simulated.Benches;
import org.pumpwright.host.calibrate.simulated.Coverage;
import org.pumpwright.host.calibrate.simulated.MadeUpTest;
import org.pumpwright.host.claim.statistics.Interval;
import org.pumpwright.host.claim.statistics.Share;

/** Prints the coverage table of the page about the bucket test. */
public final class CoverageTable {
    private static final int TESTS = 2000;
    private static final long SEED = 20_260_302;

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
                        100 * wilson(count).low(),
                        100 * wilson(count).high(),
                        100 * count.expandedShare()));
        System.out.printf(Locale.ROOT, "| %s | table instead of the law | %d tests | | |%n", method, coverage.tables());
    }

    private static Interval wilson(Coverage.Count count) {
        return new Share(count.held(), count.all()).interval();
    }
}
