package org.pumpwright.benchmarks.signal;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.pumpwright.host.signal.FaultyTrains;
import org.pumpwright.host.signal.IntervalStatistics;
import org.pumpwright.host.signal.PulseClassifier;
import org.pumpwright.host.signal.PulseDiagnosis;
import org.pumpwright.host.signal.PulseFault;

/** What the pulse classifier says of seeded trains of each kind, from all edges and from a window's sums. */
final class ConfusionTable {
    private static final int TRAINS = 1000;
    private static final List<PulseFault> FAULTS = List.of(PulseFault.values());
    private static final int TIE = FAULTS.size();

    /** Says what a train looks like. */
    private interface Judge {
        PulseDiagnosis judge(FaultyTrains.Drawn train);
    }

    private ConfusionTable() {}

    /** Measures and prints. */
    static void print() {
        print("from every edge", ConfusionTable::ofEdges);
        print("from a window's sums", ConfusionTable::ofWindow);
    }

    private static void print(String title, Judge judge) {
        System.out.printf(
                Locale.ROOT, "%npulse classifier %s, %d trains a class (rows: truth)%n%n%-14s", title, TRAINS, "");
        for (PulseFault fault : FAULTS) {
            System.out.printf(Locale.ROOT, "%9s", brief(fault));
        }
        System.out.printf(Locale.ROOT, "%9s%9s%n", "AIR/SURG", "right %");
        for (PulseFault truth : FAULTS) {
            printRow(truth, judge);
        }
    }

    private static void printRow(PulseFault truth, Judge judge) {
        RandomGenerator random = new SplittableRandom(truth.name().hashCode());
        int[] said = new int[TIE + 1];
        int right = 0;
        for (int i = 0; i < TRAINS; i++) {
            PulseDiagnosis diagnosis = judge.judge(FaultyTrains.draw(truth, random));
            Set<PulseFault> named = diagnosis.candidates();
            said[named.size() == 1 ? FAULTS.indexOf(named.iterator().next()) : TIE]++;
            right += diagnosis.names(truth) ? 1 : 0;
        }
        System.out.printf(Locale.ROOT, "%-14s", truth.name());
        Arrays.stream(said).forEach(count -> System.out.printf(Locale.ROOT, "%9d", count));
        System.out.printf(Locale.ROOT, "%9.1f%n", 100.0 * right / TRAINS);
    }

    private static String brief(PulseFault fault) {
        return fault.name().substring(0, Math.min(8, fault.name().length()));
    }

    private static PulseDiagnosis ofEdges(FaultyTrains.Drawn train) {
        return PulseClassifier.of(train.edgeSeconds(), OptionalDouble.of(train.driveHertz()));
    }

    private static PulseDiagnosis ofWindow(FaultyTrains.Drawn train) {
        double[] intervals = train.intervals();
        double reference = Arrays.stream(intervals).average().orElseThrow();
        double lagged = 0;
        for (int i = 1; i < intervals.length; i++) {
            lagged += intervals[i] * intervals[i - 1];
        }
        IntervalStatistics.Sums sums = new IntervalStatistics.Sums(
                intervals.length,
                Arrays.stream(intervals).sum(),
                Arrays.stream(intervals).map(t -> t * t).sum(),
                lagged,
                intervals.length - 1,
                Arrays.stream(intervals).max().orElseThrow(),
                (int) Arrays.stream(intervals).filter(t -> t > 1.6 * reference).count(),
                (int) Arrays.stream(intervals).filter(t -> t < 0.5 * reference).count(),
                1);
        return PulseClassifier.ofWindow(IntervalStatistics.of(sums), OptionalDouble.of(train.driveHertz()));
    }
}
