package org.pumpwright.host.grade.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Ranks the faults of an atlas by their likelihood. All readings of a run are weighed together with their covariance, since
 * those of one unit go together; each fault's severity is averaged over, not chosen, so that a fault that could look like
 * anything earns nothing by it. A Student t in the place of a normal density keeps physics that the atlas does not know from
 * deciding, and one reading may be odd. Confined to one thread.
 */
public final class CauseRanking {
    /** The id of nothing wrong. */
    public static final String HEALTHY = "healthy";

    /** Degrees of freedom of the density: the fewer, the less a large misfit counts (assumed). */
    static final double TAIL = 8;

    /** A single odd reading counts no more than this many times its variance: five standard deviations. */
    private static final double ODD = 25;

    /**
     * By so much for each reading chance makes a fault beat nothing wrong where the readings lie as healthy units' may, as a
     * logarithm: chosen so that nine in ten simulated healthy units and more have nothing wrong first, be their readings few or
     * many.
     */
    private static final double BY_CHANCE = 0.2;

    /** A fault must at least be ten times likelier than nothing wrong. */
    private static final double LEAST_BEATEN = 2.3;

    /** Stretches between two severities of the atlas. */
    private static final int STRETCHES = 4;

    private static final Comparator<Ranked> LIKELIEST_FIRST =
            Comparator.comparingDouble(ranked -> -ranked.logLikelihood());

    private final Atlas atlas;
    private final AtlasView view;
    private final Gaussian healthy;

    CauseRanking(Atlas atlas, AtlasView view) {
        this.atlas = atlas;
        this.view = view;
        healthy = view.of(atlas.healthy());
    }

    /**
     * Every fault of an atlas and nothing wrong, the likeliest first, by what a run has read; nothing wrong before all where no
     * fault beats it by more than chance does.
     */
    public static List<Ranked> rank(Atlas atlas, Evidence evidence) {
        return new CauseRanking(atlas, new AtlasView(atlas, evidence)).rank();
    }

    /** How many readings there are to weigh. */
    int readings() {
        return view.observed().length;
    }

    /** Every fault and nothing wrong, ordered; pairs too, where no single one fits. */
    List<Ranked> rank() {
        List<Ranked> all = new ArrayList<>();
        all.add(best(HEALTHY, List.of(healthy)));
        Map<String, List<Gaussian>> states = new LinkedHashMap<>();
        for (Atlas.Fault fault : atlas.faults()) {
            List<Gaussian> path = states(fault);
            states.put(fault.id(), path);
            all.add(best(fault.id(), path));
        }
        all.sort(LIKELIEST_FIRST);
        if (all.get(0).squaredDistance() > usual()) {
            all.addAll(new CausePairs(states, healthy, view.observed()).rank(all));
            all.sort(LIKELIEST_FIRST);
        }
        nothingWrongFirst(all);
        return all;
    }

    /** Many faults are tried, so that chance makes one of them fit a unit in good order better than nothing wrong does. */
    private void nothingWrongFirst(List<Ranked> all) {
        Ranked nothing = all.stream()
                .filter(one -> one.ids().equals(List.of(HEALTHY)))
                .findFirst()
                .orElseThrow();
        double beaten = all.get(0).logLikelihood() - nothing.logLikelihood();
        boolean fits = nothing.squaredDistance() <= usual();
        if (beaten < (fits ? Math.max(LEAST_BEATEN, BY_CHANCE * readings()) : LEAST_BEATEN)) {
            all.remove(nothing);
            all.add(0, nothing);
        }
    }

    /** Squared distances of units with the cause lie below this but one time in a hundred (normal approximation). */
    private double usual() {
        return readings() + 2.33 * Math.sqrt(2.0 * readings());
    }

    private List<Gaussian> states(Atlas.Fault fault) {
        List<Gaussian> path = new ArrayList<>();
        if (fault.severities().size() > 1) {
            path.add(healthy);
        }
        fault.severities().forEach(pattern -> path.add(view.of(pattern)));
        if (path.size() == 1) {
            return path;
        }
        List<Gaussian> states = new ArrayList<>();
        for (int i = 0; i < STRETCHES * (path.size() - 1); i++) {
            double share = (i % STRETCHES + 0.5) / STRETCHES;
            states.add(path.get(i / STRETCHES).towards(path.get(i / STRETCHES + 1), share, 1.0 / STRETCHES));
        }
        return states;
    }

    private Ranked best(String id, List<Gaussian> states) {
        double[] logs = new double[states.size()];
        int best = 0;
        for (int i = 0; i < logs.length; i++) {
            logs[i] = logDensity(states.get(i));
            best = logs[i] > logs[best] ? i : best;
        }
        double sum = 0;
        for (double log : logs) {
            sum += StrictMath.exp(log - logs[best]);
        }
        double mean = logs[best] + StrictMath.log(sum / logs.length);
        Cholesky root = new Cholesky(states.get(best).covariance());
        double[] off = deviation(states.get(best));
        double squared = root.squaredDistance(off);
        double odd = Math.max(0, root.largestShare(off) - ODD);
        double forgiven = logTail(squared - odd, readings()) - logTail(squared, readings());
        double severity = id.equals(HEALTHY) ? 0 : states.size() == 1 ? 1 : (best + 0.5) / states.size();
        return new Ranked(List.of(id), mean + forgiven, severity, squared - odd);
    }

    private double logDensity(Gaussian state) {
        Cholesky root = new Cholesky(state.covariance());
        return logTail(root.squaredDistance(deviation(state)), readings()) - root.halfLogDeterminant();
    }

    /** Logarithm of a Student t's density as far as it hangs on the squared distance (K. L. Lange et al. 1989). */
    static double logTail(double squaredDistance, int readings) {
        return -0.5 * (TAIL + readings) * StrictMath.log(1 + squaredDistance / TAIL);
    }

    private double[] deviation(Gaussian state) {
        double[] off = view.observed().clone();
        for (int i = 0; i < off.length; i++) {
            off[i] -= state.mean()[i];
        }
        return off;
    }
}
