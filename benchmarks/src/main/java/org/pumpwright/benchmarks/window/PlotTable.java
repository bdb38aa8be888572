package org.pumpwright.benchmarks.window;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.chart.LineChart;
import javafx.scene.chart.NumberAxis;
import javafx.scene.chart.XYChart;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.pumpwright.host.ui.control.StripChart;
import org.pumpwright.host.ui.control.StripLane;
import org.pumpwright.host.ui.control.Stroke;
import org.pumpwright.host.ui.control.TimeSeries;

/**
 * Prints frames a second and memory of the strip chart and of the toolkit's line chart, each with 8 series of 54,000 points (half an
 * hour at 30 a second) to which every frame adds one each. Arguments: seconds of each measurement.
 */
public final class PlotTable extends Application {
    private static final int SERIES = 8;
    private static final int POINTS = 54_000;
    private static final double PER_SECOND = 30;
    private static final double NANOS = 1e9;
    private static final double MEGABYTE = 1024 * 1024;
    private static double measuredSeconds = 10;
    private static long launchedNanos;

    /** Begins. */
    public static void main(String[] arguments) {
        if (arguments.length > 0) {
            measuredSeconds = Double.parseDouble(arguments[0]);
        }
        launchedNanos = System.nanoTime();
        launch(PlotTable.class);
    }

    /** A chart that can be fed. */
    private interface Fed {
        Node node();

        void add(double second, int series, double value);

        void shown();
    }

    @Override
    public void start(Stage stage) {
        StackPane root = new StackPane();
        stage.setScene(new Scene(root, 1280, 800));
        stage.show();
        new AnimationTimer() {
            @Override
            public void handle(long now) {
                stop();
                System.out.printf(
                        Locale.ROOT,
                        "First frame %.2f s after the toolkit was asked for; pipeline %s.%n%n",
                        (System.nanoTime() - launchedNanos) / NANOS,
                        System.getProperty("prism.order", "default"));
                System.out.println("| chart | frames/s | slowest 1 % of frames, ms | heap after, MB |");
                System.out.println("| --- | --- | --- | --- |");
                measure(root, "strip chart, the last 2 min", strip(120))
                        .thenCompose(done -> measure(root, "strip chart, all 30 min", strip(Double.POSITIVE_INFINITY)))
                        .thenCompose(done -> measure(root, "toolkit's line chart, all 30 min", lineChart()))
                        .thenRun(Platform::exit);
            }
        }.start();
    }

    private static CompletableFuture<Void> measure(StackPane root, String name, Fed chart) {
        for (int i = 0; i < POINTS; i++) {
            for (int series = 0; series < SERIES; series++) {
                chart.add(i / PER_SECOND, series, value(i, series));
            }
        }
        root.getChildren().setAll(chart.node());
        CompletableFuture<Void> done = new CompletableFuture<>();
        List<Long> frames = new ArrayList<>();
        new AnimationTimer() {
            private long begun = Long.MIN_VALUE;
            private int next = POINTS;

            @Override
            public void handle(long now) {
                for (int series = 0; series < SERIES; series++) {
                    chart.add(next / PER_SECOND, series, value(next, series));
                }
                next++;
                chart.shown();
                if (begun == Long.MIN_VALUE) {
                    begun = System.nanoTime();
                }
                // The first second warms up.
                double since = (System.nanoTime() - begun) / NANOS;
                if (since > 1) {
                    frames.add(System.nanoTime());
                }
                if (since > 1 + measuredSeconds) {
                    stop();
                    print(name, frames);
                    root.getChildren().clear();
                    done.complete(null);
                }
            }
        }.start();
        return done;
    }

    private static void print(String name, List<Long> frames) {
        double[] millis = new double[frames.size() - 1];
        for (int i = 0; i < millis.length; i++) {
            millis[i] = (frames.get(i + 1) - frames.get(i)) / 1e6;
        }
        Arrays.sort(millis);
        double seconds = (frames.get(frames.size() - 1) - frames.get(0)) / NANOS;
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
                Locale.ROOT,
                "| %s | %.1f | %.1f | %.0f |%n",
                name,
                millis.length / seconds,
                millis[(int) (0.99 * (millis.length - 1))],
                (runtime.totalMemory() - runtime.freeMemory()) / MEGABYTE);
    }

    private static double value(int i, int series) {
        return 2 + series * 0.3 + Math.sin(i * 0.002 * (series + 1)) + 0.2 * Math.sin(i * 1.7);
    }

    private static Fed strip(double seconds) {
        List<TimeSeries> series = new ArrayList<>();
        List<StripLane> lanes = new ArrayList<>();
        for (int i = 0; i < SERIES; i++) {
            series.add(new TimeSeries());
            lanes.add(new StripLane(
                    new SimpleStringProperty("Flow, gal/min"),
                    new SimpleStringProperty("2.07"),
                    series.get(i),
                    new Stroke(Color.web("#0072b2"), 2, 0),
                    4));
        }
        StripChart chart = new StripChart(lanes);
        chart.spanProperty().set(seconds);
        return new Fed() {
            @Override
            public Node node() {
                return chart;
            }

            @Override
            public void add(double second, int which, double value) {
                series.get(which).add(second, value);
            }

            @Override
            public void shown() {
                chart.redraw();
            }
        };
    }

    private static Fed lineChart() {
        LineChart<Number, Number> chart = new LineChart<>(new NumberAxis(), new NumberAxis());
        chart.setAnimated(false);
        chart.setCreateSymbols(false);
        List<List<XYChart.Data<Number, Number>>> early = new ArrayList<>();
        List<XYChart.Series<Number, Number>> series = new ArrayList<>();
        for (int i = 0; i < SERIES; i++) {
            early.add(new ArrayList<>());
            series.add(new XYChart.Series<>());
        }
        return new Fed() {
            @Override
            public Node node() {
                for (int i = 0; i < SERIES; i++) {
                    series.get(i).getData().setAll(early.get(i));
                    early.set(i, List.of());
                }
                chart.getData().addAll(series);
                return chart;
            }

            @Override
            public void add(double second, int which, double value) {
                XYChart.Data<Number, Number> point = new XYChart.Data<>(second, value);
                if (chart.getData().isEmpty()) {
                    early.get(which).add(point);
                } else {
                    series.get(which).getData().add(point);
                }
            }

            @Override
            public void shown() {}
        };
    }
}
