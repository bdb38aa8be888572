package org.pumpwright.host.ui.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class TimeSeriesTest {
    @Test
    void aTimeIsFoundAmongManyAndAmongEqualOnes() {
        TimeSeries series = new TimeSeries();
        for (int i = 0; i < 5000; i++) {
            series.add(i / 2, i);
        }
        assertThat(series.size()).isEqualTo(5000);
        assertThat(series.from(1000)).isEqualTo(2000);
        assertThat(series.from(1000.5)).isEqualTo(2002);
        assertThat(series.from(-1)).isZero();
        assertThat(series.from(9999)).isEqualTo(5000);
        assertThat(series.value(2001)).isEqualTo(2001);
    }

    @Test
    void timeDoesNotGoBack() {
        TimeSeries series = new TimeSeries();
        series.add(2, 0);
        assertThatThrownBy(() -> series.add(1, 0)).hasMessage("a value at 1.0 s comes after one at 2.0 s");
    }

    @Test
    void whatIsNotThereIsNotGiven() {
        assertThatThrownBy(() -> new TimeSeries().value(0)).isInstanceOf(IndexOutOfBoundsException.class);
    }
}
