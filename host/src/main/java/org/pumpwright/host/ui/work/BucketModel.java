package org.pumpwright.host.ui.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.bucket.BucketBench;
import org.pumpwright.host.app.bucket.BucketCalibration;
import org.pumpwright.host.app.bucket.BucketGuide;
import org.pumpwright.host.app.bucket.TestWatcher;
import org.pumpwright.host.calibrate.Reading.Weights;
import org.pumpwright.host.calibrate.Run;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;

/** A guided bucket test: its plan, what to do next, K as it comes, the result. JavaFX thread only. */
public final class BucketModel {
    private final Background background;
    private final StandWatchModel watch;
    private final BucketGuide guide;
    private final BucketDesk desk;
    private final Path benches;
    private final StopPress stop;
    private final Opener opener;
    private final ReadOnlyObjectWrapper<BucketStep> step = new ReadOnlyObjectWrapper<>(BucketStep.PLAN);
    private final ReadOnlyObjectWrapper<Word> sentence = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Word> complaint = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Optional<BucketBench>> bench = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<BucketPlan> plan = new ReadOnlyObjectWrapper<>(BucketPlan.USUAL);
    private final ReadOnlyObjectWrapper<Live> live = new ReadOnlyObjectWrapper<>(Live.NOTHING);
    private final ReadOnlyObjectWrapper<Integer> run = new ReadOnlyObjectWrapper<>(0);
    private final ReadOnlyObjectWrapper<Optional<BucketDesk.Kept>> result =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final StringProperty serial = new SimpleStringProperty("");
    private final StringProperty technician = new SimpleStringProperty("");
    private final ObservableList<FlowRuns> flows = FXCollections.observableArrayList();
    private final ObservableList<FlowRuns> flowsShown = FXCollections.unmodifiableObservableList(flows);
    private final AtomicReference<@Nullable Live> latest = new AtomicReference<>();
    private @Nullable BucketPerson person;
    private @Nullable StopButton button;

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

    /**
     * Tests on the stand that is watched.
     *
     * @param guide at a simulated stand it should be one by hand
     * @param benches folder of the files of benches
     */
    public BucketModel(
            Background background,
            StandWatchModel watch,
            BucketGuide guide,
            BucketDesk desk,
            Path benches,
            StopPress stop,
            Opener opener) {
        this.background = background;
        this.watch = watch;
        this.guide = guide;
        this.desk = desk;
        this.benches = benches;
        this.stop = stop;
        this.opener = opener;
        plan(BucketPlan.USUAL);
        sentence.set(BucketStep.PLAN.sentence());
    }

    /** Finds the benches; takes the one that goes with the stand when none is chosen yet. */
    public void findBenches(Consumer<List<BucketBench>> found) {
        background.run(() -> BucketBench.in(benches), all -> {
            if (bench.get().isEmpty()) {
                all.stream()
                        .max(Comparator.comparing(each -> each.name().contains("simulated") == simulated()))
                        .ifPresent(this::choose);
            }
            found.accept(all);
        });
    }

    /** Takes a bench, with the meter and the technician that its file names. */
    public void choose(BucketBench chosen) {
        bench.set(Optional.of(chosen));
        serial.set(chosen.sheet().meter().serial());
        technician.set(chosen.sheet().job().technician());
        plan(plan.get());
    }

    /** Changes the plan. */
    public void plan(BucketPlan other) {
        plan.set(other);
        double gate = bench.get().map(each -> each.gateShare(other.runs())).orElse(Double.NaN);
        flows.setAll(other.duties().stream()
                .map(duty -> new FlowRuns(duty, List.of(), other.runs(), gate))
                .toList());
    }

    /** Begins. */
    public void begin(UnitSystem units) {
        BucketBench on = bench.get().orElseThrow();
        BucketPlan by = plan.get();
        plan(by);
        BucketPerson asked = new BucketPerson(name -> background.onScreen(() -> at(BucketStep.ofQuestion(name))));
        StopButton stopping = new StopButton();
        person = asked;
        button = stopping;
        complaint.set(Word.NONE);
        result.set(Optional.empty());
        live.set(Live.NOTHING);
        at(BucketStep.STARTING);
        StandDescription stand = watch.standProperty().get();
        BucketGuide.Order order = new BucketGuide.Order(
                stand.id(),
                watch.reach().port(),
                on.file(),
                by.duties(),
                by.runs(),
                by.seconds(),
                0,
                0,
                20,
                1,
                desk.folder());
        String plate = serial.get().strip();
        String who = technician.get().strip();
        Job job = watch.aside(
                () -> {
                    StopPress.Registration press = stop.register(stopping);
                    StopPress.Registration now = stop.register(why -> guide.stopNow());
                    try {
                        BucketGuide.Done done =
                                guide.carryOut(order, Optional.empty(), asked, new Watcher(on, by), stopping, units);
                        background.onScreen(() -> at(BucketStep.WORKING_OUT));
                        return desk.keep(done, done.sheet().of(plate, who), stand.id(), units);
                    } finally {
                        now.close();
                        press.close();
                    }
                },
                this::done);
        if (job.runningProperty().get()) {
            job.runningProperty().addListener((observed, old, going) -> over());
        } else {
            over();
        }
    }

    private void over() {
        if (step.get() != BucketStep.RESULT) {
            at(BucketStep.PLAN);
        }
    }

    private void done(BucketDesk.Kept kept) {
        result.set(Optional.of(kept));
        at(BucketStep.RESULT);
        kept.troubles().forEach(each -> background.trouble(Trouble.named("store", each)));
    }

    /** A weight in grams, as it is typed. */
    public void weight(String typed) {
        String text = typed.strip();
        Optional<Double> grams = grams(text);
        if (grams.isEmpty() || grams.get() < 0 || grams.get() >= 1e7) {
            complaint.set(Word.of(text.contains(",") ? "ui.bucket.point" : "ui.bucket.no_weight", text));
            return;
        }
        give(text);
    }

    private static Optional<Double> grams(String text) {
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** Whether the scale's reading can be taken instead of typing it. */
    public boolean scaleIsRead() {
        return simulated();
    }

    private boolean simulated() {
        return watch.standProperty().get().connection() instanceof Connection.Simulated;
    }

    /** Takes what the scale shows, or says that the diverter was swung. */
    public void confirm() {
        give("");
    }

    private void give(String answer) {
        complaint.set(Word.NONE);
        BucketStep now = step.get();
        if (person != null && (now.weighs() || now.swings())) {
            at(afterwards(now));
            person.give(answer);
        }
    }

    private static BucketStep afterwards(BucketStep answered) {
        return switch (answered) {
            case TARE -> BucketStep.STEADYING;
            case SWING_IN -> BucketStep.COUNTING;
            default -> BucketStep.STARTING;
        };
    }

    /** Ends the test before its time; what was weighed is kept in its sheet. */
    public void end() {
        StopButton pressed = button;
        if (pressed != null && step.get().underWay()) {
            pressed.press("the person at the bench ended the test");
            guide.stopNow();
        }
    }

    /** Back to a new plan. */
    public void again() {
        plan(plan.get());
        result.set(Optional.empty());
        at(BucketStep.PLAN);
    }

    /** Opens one of the papers. */
    public void open(Function<BucketCalibration.Kept, Path> which) {
        result.get()
                .map(BucketDesk.Kept::papers)
                .map(which)
                .ifPresent(paper -> background.run(
                        () -> {
                            opener.open(paper);
                            return true;
                        },
                        opened -> {},
                        failure -> background.trouble(Trouble.named("paper", paper.toString()))));
    }

    private void at(BucketStep now) {
        step.set(now);
        sentence.set(now.sentence());
    }

    private void show() {
        Live counted = latest.getAndSet(null);
        if (counted != null) {
            live.set(counted);
        }
    }

    private void weighed(int number, Duty duty, double k) {
        List<FlowRuns> all = new ArrayList<>(flows);
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).duty().equals(duty)) {
                flows.set(i, all.get(i).with(k));
            }
        }
        run.set(number);
    }

    /** Carries what the guide tells to the screen; on the run thread. */
    private final class Watcher implements TestWatcher {
        private final BucketBench on;
        private final BucketPlan by;

        Watcher(BucketBench on, BucketPlan by) {
            this.on = on;
            this.by = by;
        }

        @Override
        public void says(String words) {
            // The steps are told by what is asked; the words are for a terminal.
        }

        @Override
        public void live(double seconds, double pulses, double m3) {
            if (latest.getAndSet(new Live(seconds, pulses, m3)) == null) {
                background.onScreen(BucketModel.this::show);
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
        public void kept(Run weighed) {
            Duty duty = by.duties().get((weighed.number() - 1) / by.runs());
            double k = weighed.reading() instanceof Weights ? on.k(weighed).pulsesPerM3() : Double.NaN;
            background.onScreen(() -> weighed(weighed.number(), duty, k));
        }
    }

    /** Where it is. */
    public ReadOnlyObjectProperty<BucketStep> stepProperty() {
        return step.getReadOnlyProperty();
    }

    /** What to do next, in one sentence. */
    public ReadOnlyObjectProperty<Word> sentenceProperty() {
        return sentence.getReadOnlyProperty();
    }

    /** What is wrong with what was typed; {@link Word#NONE} when nothing is. */
    public ReadOnlyObjectProperty<Word> complaintProperty() {
        return complaint.getReadOnlyProperty();
    }

    /** The bench: scale, liquid and meter. */
    public ReadOnlyObjectProperty<Optional<BucketBench>> benchProperty() {
        return bench.getReadOnlyProperty();
    }

    /** The plan. */
    public ReadOnlyObjectProperty<BucketPlan> planProperty() {
        return plan.getReadOnlyProperty();
    }

    /** What is being counted. */
    public ReadOnlyObjectProperty<Live> liveProperty() {
        return live.getReadOnlyProperty();
    }

    /** Which run of all it is, from 1; 0 before the first. */
    public ReadOnlyObjectProperty<Integer> runProperty() {
        return run.getReadOnlyProperty();
    }

    /** What came of it. */
    public ReadOnlyObjectProperty<Optional<BucketDesk.Kept>> resultProperty() {
        return result.getReadOnlyProperty();
    }

    /** The meter's serial number. */
    public StringProperty serialProperty() {
        return serial;
    }

    /** Who tests. */
    public StringProperty technicianProperty() {
        return technician;
    }

    /** The flows with their runs. */
    public ObservableList<FlowRuns> flows() {
        return flowsShown;
    }
}
