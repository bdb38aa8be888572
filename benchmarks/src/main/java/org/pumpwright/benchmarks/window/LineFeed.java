package org.pumpwright.benchmarks.window;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.chart.LineChart;
import javafx.scene.chart.NumberAxis;
import javafx.scene.chart.XYChart;

/** The toolkit's line chart with every value as a point of its own, as it is meant to be used. JavaFX thread only. */
final class LineFeed implements FedChart {
    private final LineChart<Number, Number> chart = plain();
    private final List<List<XYChart.Data<Number, Number>>> early = new ArrayList<>();
    private final List<XYChart.Series<Number, Number>> series = new ArrayList<>();
    private boolean shown;

    LineFeed(int count) {
        for (int i = 0; i < count; i++) {
            early.add(new ArrayList<>());
            series.add(new XYChart.Series<>());
        }
    }

    /** A line chart with everything off that costs time. */
    static LineChart<Number, Number> plain() {
        NumberAxis x = new NumberAxis();
        NumberAxis y = new NumberAxis();
        x.setAnimated(false);
        y.setAnimated(false);
        x.setForceZeroInRange(false);
        LineChart<Number, Number> chart = new LineChart<>(x, y);
        chart.setAnimated(false);
        chart.setCreateSymbols(false);
        chart.setLegendVisible(false);
        return chart;
    }

    @Override
    public String name() {
        return "toolkit's line chart, all 30 min, every value a point";
    }

    @Override
    public Node node() {
        for (int i = 0; i < series.size(); i++) {
            series.get(i).getData().setAll(early.get(i));
            early.set(i, List.of());
        }
        chart.getData().addAll(series);
        shown = true;
        return chart;
    }

    @Override
    public void add(double second, int which, double value) {
        XYChart.Data<Number, Number> point = new XYChart.Data<>(second, value);
        if (shown) {
            series.get(which).getData().add(point);
        } else {
            early.get(which).add(point);
        }
    }

    @Override
    public void show() {}
}
