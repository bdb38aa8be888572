package org.pumpwright.host.grade.lump;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.special.Gamma;
import org.pumpwright.host.quantity.Uncertain;

/**
 * What a fit tells of a unit. The degrees of freedom of a fitted lump are infinite: its uncertainty follows from stated ones and
 * not from the scatter. Thread-safe.
 */
public final class Lumps {
    /** A lump with a larger relative standard uncertainty is withheld: its figure would mislead. */
    public static final double MOST_RELATIVE_UNCERTAINTY = 0.25;

    /** Below this probability readings and model do not belong together (common practice, no source). */
    public static final double LEAST_PROBABILITY = 0.001;

    /**
     * A lump that is not shown.
     *
     * @param lump which
     * @param why for people
     */
    public record Withheld(Lump lump, String why) {}

    private final Map<Lump, Uncertain> estimates;
    private final double[][] covariance;
    private final double chiSquare;
    private final int degreesOfFreedom;

    private Lumps(Map<Lump, Uncertain> estimates, double[][] covariance, double chiSquare, int degreesOfFreedom) {
        this.estimates = estimates;
        this.covariance = covariance;
        this.chiSquare = chiSquare;
        this.degreesOfFreedom = degreesOfFreedom;
    }

    /** From the unknowns of a fit, lumps first and in healthy ones. */
    static Lumps of(LumpInput input, Minimum minimum, int degreesOfFreedom) {
        HealthyModel h = input.healthy();
        double[] units = {h.flowPerVolt(), h.noLoadAmps(), h.ampsPerPressure(), h.ohms(), h.slip()};
        Map<Lump, Uncertain> estimates = new EnumMap<>(Lump.class);
        double[][] covariance = new double[units.length][units.length];
        for (int i = 0; i < units.length; i++) {
            for (int j = 0; j < units.length; j++) {
                covariance[i][j] = minimum.covariance(i, j) * units[i] * units[j];
            }
            estimates.put(Layout.FITTED.get(i), Uncertain.of(minimum.at(i) * units[i], Math.sqrt(covariance[i][i])));
        }
        input.startDuty().ifPresent(start -> estimates.put(Lump.START_DUTY, start));
        input.ampsDrift().ifPresent(drift -> estimates.put(Lump.AMPS_DRIFT, drift));
        return new Lumps(estimates, covariance, minimum.sumOfSquares(), degreesOfFreedom);
    }

    /** The lumps that are good enough to be shown, in the order of {@link Lump}. */
    public Map<Lump, Uncertain> shown() {
        Map<Lump, Uncertain> shown = new EnumMap<>(estimates);
        shown.entrySet()
                .removeIf(entry -> objection(entry.getKey(), entry.getValue()).isPresent());
        return shown;
    }

    /** The lumps that are not, in the order of {@link Lump}. */
    public List<Withheld> withheld() {
        List<Withheld> withheld = new ArrayList<>();
        estimates.forEach(
                (lump, estimate) -> objection(lump, estimate).ifPresent(why -> withheld.add(new Withheld(lump, why))));
        return withheld;
    }

    /**
     * A lump whether shown or withheld: for calculations that take its uncertainty along, never for people. Empty for one
     * that was not handed in.
     */
    public Optional<Uncertain> estimate(Lump lump) {
        return Optional.ofNullable(estimates.get(lump));
    }

    /** Covariance of two lumps in their SI units; 0 with one that is not fitted, apart from its own variance. */
    public double covariance(Lump one, Lump other) {
        int i = Layout.FITTED.indexOf(one);
        int j = Layout.FITTED.indexOf(other);
        if (i >= 0 && j >= 0) {
            return covariance[i][j];
        }
        double u =
                one == other ? estimate(one).map(Uncertain::standardUncertainty).orElse(0.0) : 0;
        return u * u;
    }

    /** Sum of the squared left-overs, each over its uncertainty. */
    public double chiSquare() {
        return chiSquare;
    }

    /** Readings and knowledge beforehand less unknowns. */
    public int degreesOfFreedom() {
        return degreesOfFreedom;
    }

    /** Chi-square over its degrees of freedom: about 1 when readings, uncertainties and model belong together. */
    public double reducedChiSquare() {
        return chiSquare / degreesOfFreedom;
    }

    /** Probability that chance alone gives a chi-square as large as this. */
    public double probability() {
        return Gamma.regularizedGammaQ(degreesOfFreedom / 2.0, chiSquare / 2);
    }

    /**
     * Whether the model describes the unit. Where it does not (a bypass that opens, a dead chamber with a limping current),
     * the uncertainties are too small, and every fitted lump is withheld.
     */
    public boolean plausible() {
        return probability() >= LEAST_PROBABILITY;
    }

    private Optional<String> objection(Lump lump, Uncertain estimate) {
        if (Layout.FITTED.contains(lump) && !plausible()) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "the readings do not belong to such a pump: chi-square %.0f with %d degrees of freedom",
                    chiSquare,
                    degreesOfFreedom));
        }
        if (!(estimate.relative() <= MOST_RELATIVE_UNCERTAINTY)) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "known to %.0f %% only, at most %.0f %% is shown",
                    estimate.relative() * 100,
                    MOST_RELATIVE_UNCERTAINTY * 100));
        }
        return Layout.FITTED.contains(lump) && estimate.value() < 0
                ? Optional.of("comes out below 0, which no pump has")
                : Optional.empty();
    }
}
