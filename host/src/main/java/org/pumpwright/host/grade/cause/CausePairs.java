package org.pumpwright.host.grade.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Two faults at once: the second moves the readings by as much as it would move those of a healthy unit, on the scale on which
 * ratios add up; the scatter is that of the first. Confined to one thread.
 */
final class CausePairs {
    /** A pair is held this many times less likely beforehand than a single cause: 100 (assumed), as a logarithm. */
    static final double PRIOR_PENALTY = 4.6;

    /** Only the likeliest single causes are tried as the first of a pair. */
    private static final int FIRSTS = 6;

    /** One state in so many is tried. */
    private static final int STRIDE = 3;

    private final Map<String, List<Gaussian>> states;
    private final Gaussian healthy;
    private final double[] observed;

    /**
     * @param states of every fault, from mild to grave
     */
    CausePairs(Map<String, List<Gaussian>> states, Gaussian healthy, double[] observed) {
        this.states = states;
        this.healthy = healthy;
        this.observed = observed;
    }

    /** The likeliest pair with each of the likeliest single causes. */
    List<Ranked> rank(List<Ranked> singles) {
        List<Ranked> pairs = new ArrayList<>();
        singles.stream()
                .map(single -> single.ids().get(0))
                .filter(states::containsKey)
                .limit(FIRSTS)
                .forEach(first -> pairs.add(bestWith(first)));
        return pairs;
    }

    private Ranked bestWith(String first) {
        List<Gaussian> path = path(first);
        Ranked best = new Ranked(List.of(first), Double.NEGATIVE_INFINITY, 0, Double.POSITIVE_INFINITY);
        for (int i = first(path); i < path.size(); i += STRIDE) {
            Cholesky root = new Cholesky(path.get(i).covariance());
            double severity = (i + 0.5) / path.size();
            for (Map.Entry<String, List<Gaussian>> second : states.entrySet()) {
                if (!second.getKey().equals(first)) {
                    Ranked pair = bestSecond(List.of(first, second.getKey()), path.get(i), root, severity);
                    best = pair.logLikelihood() > best.logLikelihood() ? pair : best;
                }
            }
        }
        return best;
    }

    private Ranked bestSecond(List<String> ids, Gaussian first, Cholesky root, double severity) {
        List<Gaussian> path = path(ids.get(1));
        double least = Double.POSITIVE_INFINITY;
        for (int j = first(path); j < path.size(); j += STRIDE) {
            least = Math.min(least, root.squaredDistance(off(first, path.get(j))));
        }
        double averagedOver = StrictMath.log((double) tried(path(ids.get(0))) * tried(path));
        double log = CauseRanking.logTail(least, observed.length) - root.halfLogDeterminant();
        return new Ranked(ids, log - averagedOver - PRIOR_PENALTY, severity, least);
    }

    private static int first(List<Gaussian> path) {
        return Math.min(STRIDE / 2, path.size() - 1);
    }

    private static int tried(List<Gaussian> path) {
        return (path.size() - first(path) + STRIDE - 1) / STRIDE;
    }

    private List<Gaussian> path(String id) {
        return Objects.requireNonNull(states.get(id), id);
    }

    private double[] off(Gaussian first, Gaussian second) {
        double[] off = new double[observed.length];
        for (int k = 0; k < off.length; k++) {
            off[k] = observed[k] - first.mean()[k] - second.mean()[k] + healthy.mean()[k];
        }
        return off;
    }
}
