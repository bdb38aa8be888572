package org.pumpwright.benchmarks.window;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.pumpwright.benchmarks.window.FrameMeter.Frames;

/**
 * Prints frames a second, time to the first frame, and memory of the strip chart and of the toolkit's line chart, each with 8 series of
 * 54,000 points to which every frame adds one each. It extends no {@code Application}, so that the toolkit may lie on the class path.
 */
public final class ChartTable {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double LARGE_WIDTH = 1920;
    private static final double LARGE_HEIGHT = 1080;
    private static final double SHORT_SPAN = 120;
    private static final double ALL = Double.POSITIVE_INFINITY;
    private static final int SERIES = Recording.HALF_HOUR.series();

    private ChartTable() {}

    /**
     * Measures and prints.
     *
     * @param arguments if wanted the seconds of each measurement, 10 unless given
     */
    public static void main(String[] arguments) {
        double seconds = arguments.length > 0 ? Double.parseDouble(arguments[0]) : 10;
        Screen.during(() -> print(seconds));
    }

    private static void print(double seconds) throws InterruptedException {
        StackPane root = Screen.on(ChartTable::show);
        System.out.printf(
                Locale.ROOT,
                "Window of %.0f x %.0f, pipeline %s, 8 series of 54,000 points.%n%n",
                WIDTH,
                HEIGHT,
                System.getProperty("prism.order", "chosen by the toolkit"));
        System.out.println(
                "| chart | frames/s | 99 % of frames within, ms | a frame on the JavaFX thread, ms of processor"
                        + " | history to first frame, ms | heap after, MB |");
        System.out.println("| --- | --- | --- | --- | --- | --- |");
        List<Supplier<FedChart>> charts = List.of(
                () -> new StripFeed("strip chart, the last 2 min", SERIES, SHORT_SPAN),
                () -> new StripFeed("strip chart, all 30 min", SERIES, ALL),
                () -> new ThinnedLineFeed("toolkit's line chart, decimated, the last 2 min", SERIES, SHORT_SPAN),
                () -> new ThinnedLineFeed("toolkit's line chart, decimated, all 30 min", SERIES, ALL),
                () -> new LineFeed(SERIES));
        for (Supplier<FedChart> chart : charts) {
            measure(root, chart, seconds);
        }
        Screen.on(() -> enlarge(root));
        measure(root, () -> new StripFeed("strip chart, all 30 min, window of 1920 x 1080", SERIES, ALL), seconds);
    }

    private static StackPane show() {
        StackPane root = new StackPane();
        Stage stage = new Stage();
        stage.setScene(new Scene(root, WIDTH, HEIGHT));
        stage.show();
        return root;
    }

    private static boolean enlarge(StackPane root) {
        root.getScene().getWindow().setWidth(LARGE_WIDTH);
        root.getScene().getWindow().setHeight(LARGE_HEIGHT);
        return true;
    }

    private static void measure(StackPane root, Supplier<FedChart> made, double seconds) throws InterruptedException {
        FedChart chart = Screen.on(made::get);
        Frames frames = Screen.later(() -> FrameMeter.measure(root, Recording.HALF_HOUR, chart, seconds));
        double megabytes = Memory.usedMegabytes();
        System.out.printf(
                Locale.ROOT,
                "| %s | %.1f | %.1f | %.1f | %.0f | %.0f |%n",
                chart.name(),
                frames.perSecond(),
                frames.slowMillis(),
                frames.threadMillis(),
                frames.firstMillis(),
                megabytes);
        Screen.on(() -> root.getChildren().removeAll(root.getChildren()));
    }
}
