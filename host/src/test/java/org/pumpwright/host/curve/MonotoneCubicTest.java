package org.pumpwright.host.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MonotoneCubicTest {
    @Test
    void goesThroughItsPoints() {
        double[] y = {1, 4, 4.5, 9};
        MonotoneCubic curve = curve(new double[] {0, 1, 3, 4}, y);
        for (int upper = 1; upper < y.length; upper++) {
            assertThat(curve.at(upper, 0)).isCloseTo(y[upper - 1], within(1e-12));
            assertThat(curve.at(upper, 1)).isCloseTo(y[upper], within(1e-12));
        }
    }

    @Test
    void isExactForAStraightLineAndForTwoPoints() {
        assertThat(curve(new double[] {0, 1, 3}, new double[] {2, 4, 8}).at(2, 0.25))
                .isCloseTo(5, within(1e-12));
        assertThat(curve(new double[] {0, 2}, new double[] {2, 4}).at(1, 0.25)).isCloseTo(2.5, within(1e-12));
    }

    @Test
    void liesNearerToABendThanTheChord() {
        double[] x = {0, 1, 2, 3, 4};
        double[] y = {0, 1, 4, 9, 16};
        double chord = 6.5;
        double parabola = 6.25;
        assertThat(Math.abs(curve(x, y).at(3, 0.5) - parabola)).isLessThan(0.3 * (chord - parabola));
    }

    @Property(tries = 300, seed = "8")
    void neverOvershootsItsPoints(
            @ForAll @Size(min = 2, max = 8) List<@DoubleRange(min = -10, max = 10) Double> heights,
            @ForAll @Size(value = 8) List<@DoubleRange(min = 0.1, max = 5) Double> widths) {
        double[] x = new double[heights.size()];
        for (int i = 1; i < x.length; i++) {
            x[i] = x[i - 1] + widths.get(i - 1);
        }
        double[] y = heights.stream().mapToDouble(Double::doubleValue).toArray();
        MonotoneCubic curve = curve(x, y);
        for (int upper = 1; upper < x.length; upper++) {
            double last = y[upper - 1];
            double way = Math.signum(y[upper] - y[upper - 1]);
            for (int step = 1; step <= 20; step++) {
                double here = curve.at(upper, step / 20.0);
                assertThat((here - last) * way).isGreaterThanOrEqualTo(-1e-9);
                last = here;
            }
        }
    }

    private static MonotoneCubic curve(double[] x, double[] y) {
        return new MonotoneCubic(x.length, i -> x[i], i -> y[i]);
    }
}
