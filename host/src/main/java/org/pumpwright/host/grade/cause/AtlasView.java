package org.pumpwright.host.grade.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * An atlas, seen through the readings that one run has: which of them the atlas knows, and what its patterns say of them. A
 * set point between two of the atlas lies straight between them. Thread-safe.
 */
final class AtlasView {
    /** A reading that such units do not give could have been anything within this many units of its scale. */
    private static final double ANYTHING = 3;

    /** What the program's physics may miss, as a share of a change, beside what units with the same fault differ. */
    private static final double MODEL_SHARE = 0.10;

    /** Set points further apart than this, in percent, are not interpolated between. */
    private static final double WIDEST_GAP = 30;

    private final Atlas atlas;
    private final List<String> names = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();
    private final double[] observed;
    private final double[] healthyMean;
    private final double[] measured;

    /** Where a reading lies in the atlas: at one key, or between two. */
    private record Place(int lower, int upper, double share) {}

    AtlasView(Atlas atlas, Evidence evidence) {
        this.atlas = atlas;
        List<Observation> found = new ArrayList<>();
        Map<String, NavigableMap<Double, Integer>> rows = rows(atlas.keys());
        evidence.observations().forEach((key, observation) -> {
            Place place = place(key, rows);
            if (place != null && !Double.isNaN(at(atlas.healthy().mean(), place))) {
                names.add(key);
                places.add(place);
                found.add(observation);
            }
        });
        observed = found.stream().mapToDouble(Observation::value).toArray();
        measured = found.stream().mapToDouble(Observation::standardUncertainty).toArray();
        healthyMean = means(atlas.healthy());
    }

    private static Map<String, NavigableMap<Double, Integer>> rows(List<String> keys) {
        Map<String, NavigableMap<Double, Integer>> rows = new TreeMap<>();
        for (int i = 0; i < keys.size(); i++) {
            int at = keys.get(i).indexOf('@');
            if (at > 0) {
                rows.computeIfAbsent(keys.get(i).substring(0, at), name -> new TreeMap<>())
                        .put(Double.valueOf(keys.get(i).substring(at + 1)), i);
            }
        }
        return rows;
    }

    private @Nullable Place place(String key, Map<String, NavigableMap<Double, Integer>> rows) {
        int index = atlas.keys().indexOf(key);
        if (index >= 0) {
            return new Place(index, index, 0);
        }
        int at = key.indexOf('@');
        NavigableMap<Double, Integer> row = at > 0 ? rows.get(key.substring(0, at)) : null;
        if (row == null) {
            return null;
        }
        double percent = Double.parseDouble(key.substring(at + 1));
        Map.Entry<Double, Integer> below = row.floorEntry(percent);
        Map.Entry<Double, Integer> above = row.ceilingEntry(percent);
        if (below == null || above == null || above.getKey() - below.getKey() > WIDEST_GAP) {
            return null;
        }
        double share = (percent - below.getKey()) / (above.getKey() - below.getKey());
        return new Place(below.getValue(), above.getValue(), share);
    }

    /** The run's readings that the atlas knows. */
    List<String> names() {
        return names;
    }

    double[] observed() {
        return observed;
    }

    /** What units of a pattern give, with what the model may miss of its change against healthy units. */
    Gaussian of(Pattern pattern) {
        int n = places.size();
        double[] mean = means(pattern);
        double[][] covariance = new double[n][n];
        for (List<Double> factor : pattern.loadings()) {
            double[] loading = new double[n];
            for (int i = 0; i < n; i++) {
                loading[i] = at(factor, places.get(i));
            }
            for (int i = 0; i < n; i++) {
                for (int j = 0; j <= i; j++) {
                    covariance[i][j] += loading[i] * loading[j];
                }
            }
        }
        for (int i = 0; i < n; i++) {
            boolean unknown = Double.isNaN(mean[i]);
            mean[i] = unknown ? healthyMean[i] : mean[i];
            double missed = MODEL_SHARE * (mean[i] - healthyMean[i]);
            double own = unknown ? ANYTHING : at(pattern.own(), places.get(i));
            double floor = Allowance.of(names.get(i));
            covariance[i][i] += own * own + missed * missed + floor * floor + measured[i] * measured[i];
            if (unknown) {
                for (int j = 0; j < n; j++) {
                    if (j != i) {
                        covariance[Math.max(i, j)][Math.min(i, j)] = 0;
                    }
                }
            }
        }
        return new Gaussian(mean, covariance);
    }

    private double[] means(Pattern pattern) {
        return places.stream().mapToDouble(place -> at(pattern.mean(), place)).toArray();
    }

    private static double at(List<Double> figures, Place place) {
        double lower = figures.get(place.lower());
        return place.share() == 0 ? lower : lower + place.share() * (figures.get(place.upper()) - lower);
    }
}
