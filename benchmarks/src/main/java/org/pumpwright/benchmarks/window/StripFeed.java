package org.pumpwright.benchmarks.window;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import org.pumpwright.host.ui.control.StripChart;
import org.pumpwright.host.ui.control.StripLane;
import org.pumpwright.host.ui.control.Stroke;
import org.pumpwright.host.ui.control.TimeSeries;

/** The window's strip chart. JavaFX thread only. */
final class StripFeed implements FedChart {
    private final String name;
    private final List<TimeSeries> series = new ArrayList<>();
    private final StripChart chart;

    /** Shows so many seconds. */
    StripFeed(String name, int count, double seconds) {
        this.name = name;
        List<StripLane> lanes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            series.add(new TimeSeries());
            lanes.add(new StripLane(
                    new SimpleStringProperty("Flow, gal/min"),
                    new SimpleStringProperty("2.07 gal/min"),
                    series.get(i),
                    new Stroke(Color.web("#0072b2"), 2, 0),
                    4));
        }
        chart = new StripChart(lanes);
        chart.spanProperty().set(seconds);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Node node() {
        return chart;
    }

    @Override
    public void add(double second, int which, double value) {
        series.get(which).add(second, value);
    }

    @Override
    public void show() {
        chart.redraw();
    }
}
