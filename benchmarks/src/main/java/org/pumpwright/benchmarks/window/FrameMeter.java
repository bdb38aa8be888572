package org.pumpwright.benchmarks.window;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import javafx.animation.AnimationTimer;
import javafx.scene.layout.StackPane;

/**
 * Shows a chart that already has its history, adds a value to each series with every frame, and takes the time of the frames. The
 * toolkit lays a frame out only when the one before the last is painted, so that frames that are counted are frames that were seen. JavaFX thread only.
 */
final class FrameMeter extends AnimationTimer {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final double NANOS = 1e9;
    private static final double MILLIS = 1e6;
    private static final double WARM_SECONDS = 3;
    private static final int PAINTED = 3;

    private final Recording recording;
    private final FedChart chart;
    private final double seconds;
    private final CompletableFuture<Frames> done = new CompletableFuture<>();
    private final List<Long> frames = new ArrayList<>();
    private final long begun = System.nanoTime();
    private int next;
    private int seen;
    private double firstMillis;
    private long firstNanos;
    private long workedBefore;

    /**
     * What was measured.
     *
     * @param perSecond frames
     * @param slowMillis the time that 99 % of the frames did not exceed
     * @param firstMillis from the finished history to the first frame that shows it
     * @param threadMillis what a frame cost the processor on the JavaFX thread, mean
     */
    record Frames(double perSecond, double slowMillis, double firstMillis, double threadMillis) {}

    private FrameMeter(Recording recording, FedChart chart, double seconds) {
        this.recording = recording;
        this.chart = chart;
        this.seconds = seconds;
        next = recording.points();
    }

    /** Measures for so long, after a few seconds in which it warms up. */
    static CompletableFuture<Frames> measure(StackPane root, Recording recording, FedChart chart, double seconds) {
        recording.feed(chart);
        FrameMeter meter = new FrameMeter(recording, chart, seconds);
        root.getChildren().setAll(chart.node());
        meter.start();
        return meter.done;
    }

    @Override
    public void handle(long now) {
        long at = System.nanoTime();
        seen++;
        if (seen == PAINTED) {
            // While one frame is laid out the one before is painted: by now the first is certainly seen.
            firstNanos = at;
            firstMillis = (at - begun) / MILLIS;
        }
        if (seen >= PAINTED && (at - firstNanos) / NANOS >= WARM_SECONDS) {
            if (frames.isEmpty()) {
                workedBefore = THREADS.getCurrentThreadCpuTime();
            }
            frames.add(at);
        }
        if (frames.size() > 1 && (at - frames.get(0)) / NANOS >= seconds) {
            stop();
            done.complete(finished());
            return;
        }
        recording.feed(chart, next);
        next++;
        chart.show();
    }

    private Frames finished() {
        double worked = (THREADS.getCurrentThreadCpuTime() - workedBefore) / MILLIS;
        double[] millis = new double[frames.size() - 1];
        for (int i = 0; i < millis.length; i++) {
            millis[i] = (frames.get(i + 1) - frames.get(i)) / MILLIS;
        }
        Arrays.sort(millis);
        double all = (frames.get(millis.length) - frames.get(0)) / NANOS;
        return new Frames(
                millis.length / all,
                millis[(int) Math.ceil(0.99 * millis.length) - 1],
                firstMillis,
                worked / millis.length);
    }
}
