package org.pumpwright.host.curve;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.signal.Statistics;

/**
 * How much of a spread belongs to the units and how much to the runs, by the random-effects model {@code x_ij = mean + a_i +
 * e_ij} of unit i in run j. With the means of the units, every unit counts once, however often it was run:
 *
 * <pre>
 *   h   = units / sum(1 / n_i)                    harmonic mean of the runs of a unit
 *   B   = variance of the units' means            its expectation is s_unit^2 + s_run^2 / h
 *   W   = sum((x_ij - mean_i)^2) / (runs - units) its expectation is s_run^2
 *   one new run of a new unit: s^2 = B + (1 - 1/h) W, with
 *   s^4 / (B^2 / (units - 1) + ((1 - 1/h) W)^2 / (runs - units)) degrees of freedom
 * </pre>
 *
 * For equal numbers of runs this is the one-way analysis of variance (JCGM 100, H.5.2); for unequal ones the unweighted means
 * of J. D. Thomas and R. A. Hultquist, Annals of Statistics 6 (1978) 582, who show that B is nearly a chi-squared variable
 * then too. The degrees of freedom follow Satterthwaite (JCGM 100, G.4.1). Thread-safe.
 *
 * @param units number of units, at least 2
 * @param runs number of runs of all units
 * @param mean mean of the units' means
 * @param meanUncertainty standard uncertainty of the mean
 * @param unitVariance between units; 0 where the runs alone explain the spread
 * @param runVariance between the runs of a unit; 0 when no unit was run twice, and then part of {@code unitVariance}
 * @param totalVariance of one new run of a new unit
 * @param degreesOfFreedom behind the total variance
 */
public record VarianceComponents(
        int units,
        int runs,
        double mean,
        double meanUncertainty,
        double unitVariance,
        double runVariance,
        double totalVariance,
        double degreesOfFreedom) {

    /**
     * The components of a quantity.
     *
     * @param readings the runs of each unit, at least one each
     * @throws IllegalArgumentException with fewer than two units, or one without a run
     */
    public static VarianceComponents of(List<double[]> readings) {
        int units = readings.size();
        if (units < 2) {
            throw new IllegalArgumentException("a spread between units needs at least 2 units, there are " + units);
        }
        int runs = readings.stream().mapToInt(unit -> unit.length).sum();
        double[] means = readings.stream().mapToDouble(Statistics::mean).toArray();
        double between = Math.pow(Statistics.deviation(means), 2);
        double within = runs == units ? 0 : within(readings) / (runs - units);
        double inverse = inverseHarmonicMean(readings);
        double fromRuns = (1 - inverse) * within;
        double total = between + fromRuns;
        return new VarianceComponents(
                units,
                runs,
                Statistics.mean(means),
                Math.sqrt(between / units),
                Math.max(0, between - inverse * within),
                within,
                total,
                total == 0 ? units - 1 : degreesOfFreedom(between, units - 1, fromRuns, runs - units));
    }

    /**
     * The deviations behind {@code totalVariance}, which is the sum of their squares: first one for each unit, then one for
     * each run. Those of two quantities, multiplied one by one and summed, give their covariance.
     */
    static double[] deviations(List<double[]> readings) {
        int units = readings.size();
        int runs = readings.stream().mapToInt(unit -> unit.length).sum();
        double[] means = readings.stream().mapToDouble(Statistics::mean).toArray();
        double mean = Statistics.mean(means);
        double runWeight = runs == units ? 0 : Math.sqrt((1 - inverseHarmonicMean(readings)) / (runs - units));
        List<Double> deviations = new ArrayList<>();
        for (double unitMean : means) {
            deviations.add((unitMean - mean) / Math.sqrt(units - 1));
        }
        for (int unit = 0; unit < units; unit++) {
            for (double reading : readings.get(unit)) {
                deviations.add(runWeight * (reading - means[unit]));
            }
        }
        return deviations.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** How many units measured once would know the mean as well as these, for their spread. */
    double effectiveUnits() {
        return totalVariance == 0 ? units : totalVariance / (meanUncertainty * meanUncertainty);
    }

    private static double within(List<double[]> readings) {
        return readings.stream()
                .mapToDouble(unit -> (unit.length - 1) * Math.pow(Statistics.deviation(unit), 2))
                .sum();
    }

    private static double inverseHarmonicMean(List<double[]> readings) {
        return readings.stream().mapToDouble(unit -> 1.0 / unit.length).sum() / readings.size();
    }

    private static double degreesOfFreedom(double a, double dofOfA, double b, double dofOfB) {
        double shares = a * a / dofOfA + (b == 0 ? 0 : b * b / dofOfB);
        return (a + b) * (a + b) / shares;
    }
}
