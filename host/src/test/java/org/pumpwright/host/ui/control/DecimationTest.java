package org.pumpwright.host.ui.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class DecimationTest {
    @Test
    void aSinglePeakAmongFiftyThousandValuesIsNotLost() {
        TimeSeries series = new TimeSeries();
        for (int i = 0; i < 54_000; i++) {
            series.add(i * 0.01, i == 31_415 ? 99 : 1);
        }
        Decimation line = new Decimation(800);
        line.take(series, 0, 540);
        int column = (int) (314.15 / 540 * 800);
        assertThat(line.high(column)).isEqualTo(99);
        assertThat(line.low(column)).isEqualTo(1);
        assertThat(line.high(column + 2)).isEqualTo(1);
    }

    @Test
    void betweenTwoFarValuesTheLineIsStraight() {
        TimeSeries series = new TimeSeries();
        series.add(0, 0);
        series.add(10, 10);
        Decimation line = new Decimation(10);
        line.take(series, 0, 10);
        for (int column = 0; column < 10; column++) {
            assertThat(line.low(column)).isCloseTo(column, within(1e-12));
            assertThat(line.high(column)).isCloseTo(column + 1, within(1e-12));
        }
    }

    @Test
    void theLineEntersAndLeavesAtItsTrueHeight() {
        TimeSeries series = new TimeSeries();
        series.add(0, 0);
        series.add(100, 100);
        Decimation line = new Decimation(4);
        line.take(series, 40, 48);
        assertThat(line.low(0)).isCloseTo(40, within(1e-9));
        assertThat(line.high(3)).isCloseTo(48, within(1e-9));
    }

    @Test
    void whatIsNoNumberInterruptsTheLine() {
        TimeSeries series = new TimeSeries();
        series.add(0, 1);
        series.add(1, 1);
        series.add(4, Double.NaN);
        series.add(8, 1);
        series.add(10, 1);
        Decimation line = new Decimation(10);
        line.take(series, 0, 10);
        assertThat(line.low(0)).isEqualTo(1);
        assertThat(line.low(5)).isNaN();
        assertThat(line.low(9)).isEqualTo(1);
    }

    @Test
    void outsideOfTheSeriesThereIsNoLine() {
        TimeSeries series = new TimeSeries();
        series.add(5, 1);
        series.add(6, 1);
        Decimation line = new Decimation(10);
        line.take(series, 0, 10);
        assertThat(line.low(3)).isNaN();
        assertThat(line.low(5)).isEqualTo(1);
        assertThat(line.low(8)).isNaN();
    }

    @Test
    void anEmptySeriesHasNoLine() {
        Decimation line = new Decimation(3);
        line.take(new TimeSeries(), 0, 1);
        assertThat(line.low(0)).isNaN();
        assertThat(line.high(2)).isNaN();
    }

    @Test
    void aLineWithoutLengthIsRefused() {
        assertThatThrownBy(() -> new Decimation(3).take(new TimeSeries(), 2, 2)).hasMessageContaining("no length");
    }

    /** The envelope is that of the line itself, sampled so finely that no column is missed. */
    @Property(tries = 100, seed = "4711")
    void theEnvelopeIsThatOfTheWholeLine(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @IntRange(min = 2, max = 400) int values,
            @ForAll @IntRange(min = 1, max = 60) int columns) {
        SplittableRandom random = new SplittableRandom(seed);
        TimeSeries series = new TimeSeries();
        double second = 0;
        for (int i = 0; i < values; i++) {
            second += 0.01 + random.nextDouble();
            series.add(second, random.nextDouble() * 10);
        }
        Decimation line = new Decimation(columns);
        line.take(series, 0, second);
        for (int i = 0; i < values; i++) {
            int column = (int) Math.floor(series.second(i) / second * columns);
            if (column < columns) {
                assertThat(series.value(i)).isBetween(line.low(column), line.high(column));
            }
        }
        for (int column = 1; column < columns; column++) {
            if (!Double.isNaN(line.low(column - 1)) && !Double.isNaN(line.low(column))) {
                assertThat(line.low(column)).as("joined").isLessThanOrEqualTo(line.high(column - 1) + 1e-9);
                assertThat(line.high(column)).as("joined").isGreaterThanOrEqualTo(line.low(column - 1) - 1e-9);
            }
        }
    }
}
