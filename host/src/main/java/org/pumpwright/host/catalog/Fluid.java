package org.pumpwright.host.catalog;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.Temperature;

/**
 * A liquid and what has been published of its density. A batch differs from its published figure by a percent or more, and
 * sources differ among themselves: who needs it better weighs the own product. Thread-safe.
 *
 * @param id short name
 * @param title for people
 * @param densities published figures, the one to use first; at least one
 */
public record Fluid(String id, String title, List<Published> densities) {
    /**
     * One published density.
     *
     * @param kilogramsPerM3 the density
     * @param at its temperature; empty where the source names none
     * @param source where it stands
     */
    public record Published(double kilogramsPerM3, Optional<Temperature> at, String source) {}

    public Fluid {
        densities = List.copyOf(densities);
        if (densities.isEmpty()) {
            throw new IllegalArgumentException("fluid %s has no density".formatted(id));
        }
    }

    /** The published figure to use where nobody has measured: the one that is nearest in temperature, else the first. */
    public Published density(Optional<Temperature> wanted) {
        if (wanted.isEmpty()) {
            return densities.get(0);
        }
        double kelvin = wanted.get().kelvin();
        return densities.stream()
                .filter(figure -> figure.at().isPresent())
                .min(Comparator.comparingDouble(
                        figure -> Math.abs(figure.at().orElseThrow().kelvin() - kelvin)))
                .orElse(densities.get(0));
    }

    /** Largest published figure over the smallest, less 1: how far sources and temperatures are apart. */
    public double spread() {
        double most =
                densities.stream().mapToDouble(Published::kilogramsPerM3).max().orElseThrow();
        double least =
                densities.stream().mapToDouble(Published::kilogramsPerM3).min().orElseThrow();
        return most / least - 1;
    }
}
