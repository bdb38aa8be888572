package org.pumpwright.host.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class AxisTest {
    private static List<String> labels(Axis axis) {
        return axis.ticks().stream().map(axis::label).toList();
    }

    @Test
    void ticksAreRoundFigures() {
        assertThat(labels(Axis.toCover(3.86, 5))).containsExactly("0", "1", "2", "3", "4");
        assertThat(labels(Axis.toCover(13.2, 7))).containsExactly("0", "2", "4", "6", "8", "10", "12", "14");
        assertThat(labels(Axis.toCover(0.9, 5))).containsExactly("0.0", "0.2", "0.4", "0.6", "0.8", "1.0");
        assertThat(labels(Axis.toCover(0.02, 4))).containsExactly("0.000", "0.005", "0.010", "0.015", "0.020");
        assertThat(labels(Axis.toCover(230, 5))).containsExactly("0", "50", "100", "150", "200", "250");
    }

    @Test
    void anAxisWithoutAValueToCoverIsStillAnAxis() {
        assertThat(labels(Axis.toCover(0, 5))).containsExactly("0.0", "0.2", "0.4", "0.6", "0.8", "1.0");
        assertThat(labels(Axis.toCover(Double.NaN, 5))).hasSize(6);
    }

    @Property(seed = "20260402", tries = 1000)
    void anAxisCoversItsValuesWithFewTicksAndNoTwoLabelsAlike(
            @ForAll @DoubleRange(min = 1e-4, max = 1e5) @Scale(6) double largest,
            @ForAll @IntRange(min = 3, max = 9) int steps) {
        Axis axis = Axis.toCover(largest, steps);
        assertThat(axis.to()).isGreaterThanOrEqualTo(largest * (1 - 1e-6));
        assertThat(axis.ticks()).hasSizeBetween(2, steps + 2);
        assertThat(labels(axis)).doesNotHaveDuplicates();
        assertThat(axis.share(axis.ticks().get(axis.ticks().size() - 1))).isBetween(0.999, 1.001);
    }
}
