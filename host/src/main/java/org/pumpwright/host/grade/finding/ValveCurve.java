package org.pumpwright.host.grade.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.Uncertain;

/**
 * Flow over coil amps on one way of a sweep, between its points a straight line. Duty plays no part: a coil that is warm or a
 * plug with ohms in it changes what a duty gives, not what an ampere does. Thread-safe.
 */
final class ValveCurve {
    /**
     * One point.
     *
     * @param amps of the coil, scatter alone
     * @param flow m3/s, without the uncertainty of K
     */
    record Point(Uncertain amps, Uncertain flow) {}

    private final List<Point> points;

    ValveCurve(List<Point> points) {
        this.points = new ArrayList<>(points);
        this.points.sort(Comparator.comparingDouble(point -> point.amps().value()));
    }

    List<Point> points() {
        return List.copyOf(points);
    }

    /** Flow at a current; empty outside the points. */
    Optional<Uncertain> flowAt(double amps) {
        for (int i = 1; i < points.size(); i++) {
            Point low = points.get(i - 1);
            Point high = points.get(i);
            if (amps >= low.amps().value() && amps <= high.amps().value()) {
                return Optional.of(between(amps, low.amps(), low.flow(), high.amps(), high.flow()));
            }
        }
        return Optional.empty();
    }

    /**
     * Current at which a flow is first reached. Below the lowest point's flow the line through the lowest two goes on, to no
     * current at the least, and the way it goes on counts as doubt (rectangular). Empty where the flow is never reached.
     */
    Optional<Uncertain> ampsAt(double flow) {
        if (points.size() < 2) {
            return Optional.empty();
        }
        for (int i = 1; i < points.size(); i++) {
            Point low = points.get(i - 1);
            Point high = points.get(i);
            if (flow <= high.flow().value() && high.flow().value() > low.flow().value()) {
                Uncertain amps = between(flow, low.flow(), low.amps(), high.flow(), high.amps());
                double beyond = low.amps().value() - amps.value();
                if (i > 1 || beyond <= 0) {
                    return Optional.of(amps);
                }
                double held = Math.max(0, amps.value());
                return Optional.of(new Uncertain(held, amps.standardUncertainty(), amps.degreesOfFreedom())
                        .with((low.amps().value() - held) / Math.sqrt(12), Double.POSITIVE_INFINITY));
            }
        }
        return Optional.empty();
    }

    /** On the straight line through two points whose both coordinates are uncertain. */
    private static Uncertain between(double x, Uncertain x1, Uncertain y1, Uncertain x2, Uncertain y2) {
        double share = (x - x1.value()) / (x2.value() - x1.value());
        double slope = (y2.value() - y1.value()) / (x2.value() - x1.value());
        return new Uncertain(
                        y1.value() + share * (y2.value() - y1.value()),
                        Math.abs(1 - share) * y1.standardUncertainty(),
                        y1.degreesOfFreedom())
                .with(Math.abs(share) * y2.standardUncertainty(), y2.degreesOfFreedom())
                .with(Math.abs(slope * (1 - share)) * x1.standardUncertainty(), x1.degreesOfFreedom())
                .with(Math.abs(slope * share) * x2.standardUncertainty(), x2.degreesOfFreedom());
    }
}
