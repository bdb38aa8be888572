package org.pumpwright.host.grade.cause;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/** Makes an atlas from what simulated units have read: means, and covariances drawn towards that of healthy units. */
public final class AtlasMaker {
    private static final int FACTORS = 6;
    private static final double LEAST_SHARE_OF_UNITS = 0.6;

    /** Healthy units' spread counts as much as this many units more in that of a fault. */
    private static final double HEALTHY_WEIGHT = 5;

    private static final double CORRELATION_OF_THE_FAULT = 0.5;

    /** No reading of a unit is surer than this, on its scale. */
    private static final double LEAST_SPREAD = 0.002;

    /** A change of fewer standard deviations of its mean than this may be chance. */
    private static final double SURE = 2;

    /**
     * What one unit read.
     *
     * @param number the same number is the same unit, healthy or not
     * @param evidence its readings
     */
    public record Unit(int number, Evidence evidence) {}

    private final List<String> keys;
    private final Map<Integer, double[]> healthyRows = new TreeMap<>();
    private final Moments healthy;

    private AtlasMaker(Predicate<String> used, List<Unit> healthyUnits) {
        keys = keys(healthyUnits).stream().filter(used).toList();
        healthyUnits.forEach(unit -> healthyRows.put(unit.number(), row(unit)));
        healthy = moments(List.copyOf(healthyRows.values()));
    }

    /**
     * @param about where the figures come from
     * @param used the keys that the atlas is to have, of those that most healthy units give
     * @param healthyUnits readings of units in good order
     * @param faults readings by fault and degree, the mildest first
     */
    public static Atlas make(
            String about, Predicate<String> used, List<Unit> healthyUnits, Map<String, List<List<Unit>>> faults) {
        AtlasMaker maker = new AtlasMaker(used, healthyUnits);
        List<Atlas.Fault> made = new ArrayList<>();
        faults.forEach((id, degrees) ->
                made.add(new Atlas.Fault(id, degrees.stream().map(maker::fault).toList())));
        return new Atlas(about, maker.keys, maker.pattern(maker.healthy), made);
    }

    /** Units in good order on a stand whose meter counts other than it should, by the logarithm of its ratio. */
    public static List<Unit> misread(List<Unit> healthyUnits, double logRatio) {
        return healthyUnits.stream()
                .map(unit -> new Unit(unit.number(), misread(unit.evidence(), logRatio)))
                .toList();
    }

    private static Evidence misread(Evidence evidence, double logRatio) {
        SortedMap<String, Observation> moved = new TreeMap<>(evidence.observations());
        moved.replaceAll((key, seen) -> key.startsWith("flow@") || key.equals("nozzle")
                ? new Observation(seen.value() + logRatio, seen.standardUncertainty())
                : seen);
        return new Evidence(moved, evidence.againstCurve());
    }

    private static List<String> keys(List<Unit> units) {
        Map<String, Integer> counts = new TreeMap<>();
        units.forEach(
                unit -> unit.evidence().observations().keySet().forEach(key -> counts.merge(key, 1, Integer::sum)));
        return counts.entrySet().stream()
                .filter(count -> count.getValue() >= LEAST_SHARE_OF_UNITS * units.size())
                .map(Map.Entry::getKey)
                .toList();
    }

    private record Moments(double[] mean, double[] deviation, double[][] correlation) {}

    private Moments moments(List<double[]> rows) {
        int n = keys.size();
        double[] mean = new double[n];
        double[] deviation = new double[n];
        for (int i = 0; i < n; i++) {
            int key = i;
            double[] known = rows.stream()
                    .mapToDouble(row -> row[key])
                    .filter(x -> !Double.isNaN(x))
                    .toArray();
            if (known.length < LEAST_SHARE_OF_UNITS * rows.size()) {
                mean[i] = Double.NaN;
                continue;
            }
            double average =
                    IntStream.range(0, known.length).mapToDouble(k -> known[k]).sum() / known.length;
            double squares = IntStream.range(0, known.length)
                    .mapToDouble(k -> (known[k] - average) * (known[k] - average))
                    .sum();
            mean[i] = average;
            deviation[i] = Math.sqrt(squares / (known.length - 1));
        }
        double[][] correlation = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                correlation[i][j] = i == j ? 1 : correlation(rows, mean, i, j);
            }
        }
        return new Moments(mean, deviation, correlation);
    }

    private double[] row(Unit unit) {
        return keys.stream()
                .mapToDouble(key -> {
                    Observation found = unit.evidence().observations().get(key);
                    return found == null ? Double.NaN : found.value();
                })
                .toArray();
    }

    private static double correlation(List<double[]> rows, double[] mean, int i, int j) {
        double product = 0;
        double a = 0;
        double b = 0;
        for (double[] row : rows) {
            double x = row[i] - mean[i];
            double y = row[j] - mean[j];
            if (!Double.isNaN(x) && !Double.isNaN(y)) {
                product += x * y;
                a += x * x;
                b += y * y;
            }
        }
        return a * b > 0 ? product / Math.sqrt(a * b) : 0;
    }

    private Pattern fault(List<Unit> units) {
        List<double[]> rows = units.stream().map(this::row).toList();
        Moments own = moments(rows);
        Moments change = moments(units.stream()
                .filter(unit -> healthyRows.containsKey(unit.number()))
                .map(this::change)
                .toList());
        int n = keys.size();
        double[] mean = new double[n];
        double[] deviation = new double[n];
        double[][] correlation = new double[n][n];
        double unitsLess = units.size() - 1;
        for (int i = 0; i < n; i++) {
            double of = own.deviation[i];
            double from = healthy.deviation[i];
            deviation[i] =
                    Math.sqrt((unitsLess * of * of + HEALTHY_WEIGHT * from * from) / (unitsLess + HEALTHY_WEIGHT));
            double surely = change.mean[i] / change.deviation[i] * Math.sqrt(units.size()) / SURE;
            double kept = Double.isNaN(surely) ? 1 : Math.max(0, 1 - 1 / (surely * surely));
            mean[i] = healthy.mean[i] + kept * change.mean[i];
            for (int j = 0; j < n; j++) {
                correlation[i][j] = CORRELATION_OF_THE_FAULT * own.correlation[i][j]
                        + (1 - CORRELATION_OF_THE_FAULT) * healthy.correlation[i][j];
            }
        }
        return pattern(new Moments(mean, deviation, correlation));
    }

    /** What a fault changed of the very unit: what units differ by anyway drops out. */
    private double[] change(Unit unit) {
        double[] before = healthyRows.get(unit.number());
        double[] changed = row(unit);
        for (int i = 0; i < changed.length; i++) {
            changed[i] -= before[i];
        }
        return changed;
    }

    /** Principal factors of the correlations, and what they leave to each reading. */
    private Pattern pattern(Moments moments) {
        int n = keys.size();
        EigenDecompositionSymmetric eigen =
                new EigenDecompositionSymmetric(new Array2DRowRealMatrix(moments.correlation));
        List<Integer> order = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -eigen.getEigenvalue(i)))
                .limit(FACTORS)
                .toList();
        double[] left = new double[n];
        Arrays.fill(left, 1);
        List<List<Double>> loadings = new ArrayList<>();
        for (int factor : order) {
            double root = Math.sqrt(Math.max(0, eigen.getEigenvalue(factor)));
            double[] loading = new double[n];
            for (int i = 0; i < n; i++) {
                double share = root * eigen.getEigenvector(factor).getEntry(i);
                left[i] -= share * share;
                loading[i] = share * moments.deviation[i];
            }
            loadings.add(rounded(loading, 3));
        }
        double[] own = new double[n];
        for (int i = 0; i < n; i++) {
            own[i] = Math.max(LEAST_SPREAD, moments.deviation[i] * Math.sqrt(Math.max(0.02, left[i])));
        }
        return new Pattern(rounded(moments.mean, 5), rounded(own, 3), loadings);
    }

    private static List<Double> rounded(double[] figures, int digits) {
        return IntStream.range(0, figures.length)
                .mapToObj(i -> Double.isNaN(figures[i])
                        ? Double.NaN
                        : Math.abs(figures[i]) < 1e-5
                                ? 0.0
                                : new BigDecimal(figures[i])
                                        .round(new MathContext(digits))
                                        .doubleValue())
                .toList();
    }
}
