package org.pumpwright.host.ui.work;

import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.bucket.BucketBench;
import org.pumpwright.host.app.bucket.TestWatcher;
import org.pumpwright.host.calibrate.Reading.Weights;
import org.pumpwright.host.calibrate.Run;
import org.pumpwright.host.quantity.Duty;

/** How far a bucket test has come: what is being counted, which run it is, K of each run that was weighed. JavaFX thread only. */
public final class BucketProgress {
    private final Background background;
    private final ReadOnlyObjectWrapper<Live> live = new ReadOnlyObjectWrapper<>(Live.NOTHING);
    private final ReadOnlyObjectWrapper<Integer> run = new ReadOnlyObjectWrapper<>(0);
    private final ObservableList<FlowRuns> flows = FXCollections.observableArrayList();
    private final ObservableList<FlowRuns> flowsShown = FXCollections.unmodifiableObservableList(flows);
    private final AtomicReference<@Nullable Live> latest = new AtomicReference<>();

    /**
     * What is counted while the bucket fills.
     *
     * @param seconds since the diverter was swung in
     * @param pulses since then
     * @param m3 by the meter's K until now
     */
    public record Live(double seconds, double pulses, double m3) {
        static final Live NOTHING = new Live(0, 0, 0);

        /** Mean flow since then, m3/s. */
        public double m3PerSecond() {
            return seconds > 0 ? m3 / seconds : 0;
        }
    }

    BucketProgress(Background background) {
        this.background = background;
    }

    /** What is being counted. */
    public ReadOnlyObjectProperty<Live> liveProperty() {
        return live.getReadOnlyProperty();
    }

    /** Which run of all it is, from 1; 0 before the first. */
    public ReadOnlyObjectProperty<Integer> runProperty() {
        return run.getReadOnlyProperty();
    }

    /** The flows with their runs. */
    public ObservableList<FlowRuns> flows() {
        return flowsShown;
    }

    /** Nothing is weighed yet of this plan. */
    void begin(BucketPlan plan, double gateShare) {
        live.set(Live.NOTHING);
        run.set(0);
        flows.setAll(plan.duties().stream()
                .map(duty -> new FlowRuns(duty, List.of(), plan.runs(), gateShare))
                .toList());
    }

    private void show() {
        Live counted = latest.getAndSet(null);
        if (counted != null) {
            live.set(counted);
        }
    }

    private void weighed(int number, Duty duty, double k) {
        for (int i = 0; i < flows.size(); i++) {
            if (flows.get(i).duty().equals(duty)) {
                flows.set(i, flows.get(i).with(k));
            }
        }
        run.set(number);
    }

    /** What the scale does; on the JavaFX thread. */
    interface ScaleHearer {
        void shows(double grams);

        void fails(String why);
    }

    /** Carries what the guide tells to the screen; it is called on the run thread. */
    TestWatcher watcher(BucketBench bench, BucketPlan plan, ScaleHearer scale) {
        return new Watcher(bench, plan, scale);
    }

    private final class Watcher implements TestWatcher {
        private final BucketBench bench;
        private final BucketPlan plan;
        private final ScaleHearer scale;

        Watcher(BucketBench bench, BucketPlan plan, ScaleHearer scale) {
            this.bench = bench;
            this.plan = plan;
            this.scale = scale;
        }

        @Override
        public void says(String words) {
            // The steps are told by what is asked; the words are for a terminal.
        }

        @Override
        public void live(double seconds, double pulses, double m3) {
            if (latest.getAndSet(new Live(seconds, pulses, m3)) == null) {
                background.onScreen(BucketProgress.this::show);
            }
        }

        @Override
        public void began(int number, Duty duty) {
            background.onScreen(() -> {
                run.set(number);
                live.set(Live.NOTHING);
            });
        }

        @Override
        public void scaleShows(double grams) {
            background.onScreen(() -> scale.shows(grams));
        }

        @Override
        public void scaleFails(String why) {
            background.onScreen(() -> scale.fails(why));
        }

        @Override
        public void kept(Run weighed) {
            Duty duty = plan.duties().get((weighed.number() - 1) / plan.runs());
            double k = weighed.reading() instanceof Weights ? bench.k(weighed).pulsesPerM3() : Double.NaN;
            background.onScreen(() -> weighed(weighed.number(), duty, k));
        }
    }
}
