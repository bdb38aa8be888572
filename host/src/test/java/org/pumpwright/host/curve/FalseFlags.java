package org.pumpwright.host.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.pumpwright.host.claim.statistics.Share;
import org.pumpwright.host.signal.Statistics;

/**
 * Counts how often a healthy unit is flagged by a joint band: many populations are drawn, a band is made of each as a curve is
 * built, and new units are held against it.
 *
 * @param units known-good units of a band
 * @param runs runs of each
 * @param correlation of the features, between 0 and 1; see {@link #shape}
 * @param shape how features go together
 * @param features how many
 * @param unitShare share of the variance that lies between units
 * @param form makes the deviation of a unit from a standard normal number
 */
record FalseFlags(
        int units,
        int runs,
        double correlation,
        Shape shape,
        int features,
        double unitShare,
        DoubleUnaryOperator form) {
    enum Shape {
        /** Every pair alike. */
        ALL_ALIKE,
        /** Neighbours more than others, by powers. */
        NEIGHBOURS,
        /** Two halves that know nothing of each other. */
        TWO_HALVES
    }

    /** What came of it: flagged of probed, and the standard error of the share between bands. */
    record Count(long flagged, long probed, double standardError) {
        double share() {
            return (double) flagged / probed;
        }

        /** Upper end of the 95 % interval of E. B. Wilson (1927), for probes that are independent. */
        double wilsonUpper() {
            return new Share(Math.toIntExact(flagged), Math.toIntExact(probed))
                    .interval()
                    .high();
        }

        /** The same for probes that share their band: normal interval by the scatter between the bands. */
        double upperBetweenBands() {
            return share() + 1.96 * standardError;
        }
    }

    Count count(int bands, int probes, int draws, long seed) {
        double[][] root = root();
        NormalDraws normal = new NormalDraws(seed);
        double[] shares = new double[bands];
        long flagged = 0;
        for (int band = 0; band < bands; band++) {
            long here = flaggedByOne(root, probes, draws, seed + band, normal);
            shares[band] = (double) here / probes;
            flagged += here;
        }
        double error = Statistics.deviation(shares) / Math.sqrt(bands);
        return new Count(flagged, (long) bands * probes, error);
    }

    private long flaggedByOne(double[][] root, int probes, int draws, long seed, NormalDraws normal) {
        List<double[][]> population = new ArrayList<>();
        for (int i = 0; i < units; i++) {
            population.add(unit(root, runs, normal));
        }
        List<double[]> deviations = new ArrayList<>();
        List<VarianceComponents> components = new ArrayList<>();
        double dof = units - 1;
        for (int f = 0; f < features; f++) {
            int feature = f;
            List<double[]> readings = population.stream()
                    .map(unit ->
                            Arrays.stream(unit).mapToDouble(run -> run[feature]).toArray())
                    .toList();
            components.add(VarianceComponents.of(readings));
            deviations.add(VarianceComponents.deviations(readings));
            dof = Math.min(dof, components.get(f).degreesOfFreedom());
        }
        double k = JointBand.factor(deviations, units, dof, CurvePopulation.INSIDE, draws, ~seed);
        long flagged = 0;
        for (int probe = 0; probe < probes; probe++) {
            flagged += outside(unit(root, 1, normal)[0], components, k) ? 1 : 0;
        }
        return flagged;
    }

    private static boolean outside(double[] values, List<VarianceComponents> components, double k) {
        for (int f = 0; f < values.length; f++) {
            VarianceComponents c = components.get(f);
            if (Math.abs(values[f] - c.mean()) > k * Math.sqrt(c.totalVariance())) {
                return true;
            }
        }
        return false;
    }

    private double[][] unit(double[][] root, int howOften, NormalDraws normal) {
        double[] own = draw(root, normal);
        double[][] readings = new double[howOften][features];
        for (double[] run : readings) {
            double[] ofTheRun = draw(root, normal);
            for (int f = 0; f < features; f++) {
                run[f] = Math.sqrt(unitShare) * form.applyAsDouble(own[f]) + Math.sqrt(1 - unitShare) * ofTheRun[f];
            }
        }
        return readings;
    }

    private static double[] draw(double[][] root, NormalDraws normal) {
        double[] z = new double[root.length];
        double[] x = new double[root.length];
        for (int i = 0; i < z.length; i++) {
            z[i] = normal.next();
            for (int k = 0; k <= i; k++) {
                x[i] += root[i][k] * z[k];
            }
        }
        return x;
    }

    private double[][] root() {
        double[][] r = new double[features][features];
        for (int i = 0; i < features; i++) {
            for (int j = 0; j < features; j++) {
                boolean sameHalf = (i < features / 2) == (j < features / 2);
                r[i][j] = i == j
                        ? 1
                        : switch (shape) {
                            case ALL_ALIKE -> correlation;
                            case NEIGHBOURS -> Math.pow(correlation, Math.abs(i - j));
                            case TWO_HALVES -> sameHalf ? correlation : 0;
                        };
            }
        }
        return new CholeskyDecomposition(MatrixUtils.createRealMatrix(r), 1e-9, 1e-12)
                .getL()
                .getData();
    }

    /** Prints the table of docs/metrology/curves.md. */
    public static void main(String[] arguments) {
        int bands = Integer.parseInt(arguments[0]);
        DoubleUnaryOperator normal = z -> z;
        DoubleUnaryOperator skewed = z -> (Math.exp(0.2 * z) - Math.exp(0.02)) / 0.2;
        System.out.println("units runs features unit-share shape r form flagged% wilson% upper%");
        for (int n : new int[] {10, 20, 30}) {
            print(bands, new FalseFlags(n, 2, 0, Shape.ALL_ALIKE, 6, 0.9, normal), "normal");
            print(bands, new FalseFlags(n, 2, 0.9, Shape.ALL_ALIKE, 6, 0.9, normal), "normal");
            print(bands, new FalseFlags(n, 2, 0.9, Shape.NEIGHBOURS, 18, 0.9, normal), "normal");
            print(bands, new FalseFlags(n, 2, 0.95, Shape.TWO_HALVES, 18, 0.9, normal), "normal");
            print(bands, new FalseFlags(n, 2, 0.5, Shape.ALL_ALIKE, 6, 0.4, normal), "normal");
            print(bands, new FalseFlags(n, 1, 0.7, Shape.NEIGHBOURS, 18, 0.9, normal), "normal");
            print(bands, new FalseFlags(n, 2, 0.9, Shape.NEIGHBOURS, 18, 0.9, skewed), "skewed");
        }
    }

    private static void print(int bands, FalseFlags flags, String form) {
        Count count = flags.count(bands, 2000, 20_000, 7);
        System.out.printf(
                Locale.ROOT,
                "%d %d %d %.1f %s %.2f %s %.3f %.3f %.3f%n",
                flags.units,
                flags.runs,
                flags.features,
                flags.unitShare,
                flags.shape,
                flags.correlation,
                form,
                100 * count.share(),
                100 * count.wilsonUpper(),
                100 * count.upperBetweenBands());
    }
}
