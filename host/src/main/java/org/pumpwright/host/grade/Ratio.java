package org.pumpwright.host.grade;

import java.util.LinkedHashSet;
import java.util.Set;
import org.pumpwright.host.quantity.Uncertain;

/**
 * The ratio of two figures of one run. An error that both have through the same thing, such as the meter's K, is fully
 * correlated and only its difference is left (JCGM 100, 5.2.2 with r = 1); what is each figure's own adds in quadrature.
 * Thread-safe.
 */
final class Ratio {
    private Ratio() {}

    static Uncertain of(PointFigure above, PointFigure below) {
        Uncertain ratio =
                new Uncertain(above.measured().value() / below.measured().value(), 0, Double.POSITIVE_INFINITY);
        double size = Math.abs(ratio.value());
        ratio = ratio.with(size * share(above, ""), above.measured().degreesOfFreedom())
                .with(size * share(below, ""), below.measured().degreesOfFreedom());
        Set<String> shared = new LinkedHashSet<>();
        above.budget().forEach(term -> shared.add(term.through()));
        below.budget().forEach(term -> shared.add(term.through()));
        shared.remove("");
        for (String through : shared) {
            double left = Math.abs(share(above, through) - share(below, through));
            ratio = ratio.with(size * left, Double.POSITIVE_INFINITY);
        }
        return ratio;
    }

    /** All terms through one thing, as a share of the value. */
    private static double share(PointFigure figure, String through) {
        double squares = figure.budget().stream()
                .filter(term -> term.through().equals(through))
                .mapToDouble(term -> term.standardUncertainty() * term.standardUncertainty())
                .sum();
        return Math.sqrt(squares) / Math.abs(figure.measured().value());
    }
}
