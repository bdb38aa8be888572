package org.pumpwright.benchmarks.window;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.chart.LineChart;
import javafx.scene.chart.XYChart;
import org.pumpwright.host.ui.control.Decimation;
import org.pumpwright.host.ui.control.TimeSeries;

/**
 * The toolkit's line chart as the strip chart's fair rival: fed with two points a column of pixels, the least and the most, found by the
 * same decimation; the points are made once and moved. JavaFX thread only.
 */
final class ThinnedLineFeed implements FedChart {
    private static final int COLUMNS = 1084;

    private final String name;
    private final double span;
    private final LineChart<Number, Number> chart = LineFeed.plain();
    private final Decimation columns = new Decimation(COLUMNS);
    private final List<TimeSeries> series = new ArrayList<>();
    private final List<List<XYChart.Data<Number, Number>>> points = new ArrayList<>();

    /** Shows so many seconds. */
    ThinnedLineFeed(String name, int count, double span) {
        this.name = name;
        this.span = span;
        for (int i = 0; i < count; i++) {
            series.add(new TimeSeries());
            List<XYChart.Data<Number, Number>> own = new ArrayList<>();
            for (int k = 0; k < 2 * COLUMNS; k++) {
                own.add(new XYChart.Data<>(0, 0));
            }
            points.add(own);
            XYChart.Series<Number, Number> line = new XYChart.Series<>();
            line.getData().setAll(own);
            chart.getData().add(line);
        }
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Node node() {
        show();
        return chart;
    }

    @Override
    public void add(double second, int which, double value) {
        series.get(which).add(second, value);
    }

    @Override
    public void show() {
        for (int i = 0; i < series.size(); i++) {
            show(series.get(i), points.get(i));
        }
    }

    private void show(TimeSeries line, List<XYChart.Data<Number, Number>> own) {
        double to = line.second(line.size() - 1);
        double from = Math.max(line.second(0), to - span);
        columns.take(line, from, to);
        for (int column = 0; column < COLUMNS; column++) {
            double second = from + (to - from) * (column + 0.5) / COLUMNS;
            move(own.get(2 * column), second, columns.low(column));
            move(own.get(2 * column + 1), second, columns.high(column));
        }
    }

    private static void move(XYChart.Data<Number, Number> point, double second, double value) {
        point.setXValue(second);
        point.setYValue(value);
    }
}
