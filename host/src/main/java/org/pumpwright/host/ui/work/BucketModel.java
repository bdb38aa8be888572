package org.pumpwright.host.ui.work;

import java.nio.file.Path;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.bucket.BucketBench;
import org.pumpwright.host.app.bucket.BucketGuide;
import org.pumpwright.host.app.bucket.LineScale;
import org.pumpwright.host.app.bucket.TestWatcher;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.stand.StandException;

/** A guided bucket test, from Begin to its result: what to do next, the answers, STOP. JavaFX thread only. */
public final class BucketModel {
    private static final double USUAL_CELSIUS = 20;

    private final Background background;
    private final StandWatchModel watch;
    private final BucketGuide guide;
    private final BucketDesk desk;
    private final ScaleModel scales;
    private final StopPress stop;
    private final BucketSetUp setUp;
    private final BucketProgress progress;
    private final ReadOnlyObjectWrapper<BucketStep> step = new ReadOnlyObjectWrapper<>(BucketStep.PLAN);
    private final ReadOnlyObjectWrapper<Word> sentence = new ReadOnlyObjectWrapper<>(BucketStep.PLAN.sentence());
    private final ReadOnlyObjectWrapper<Word> complaint = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Optional<BucketDesk.Kept>> result =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private BucketStep answered = BucketStep.PLAN;
    private @Nullable BucketPerson person;
    private @Nullable StopButton button;

    /**
     * Tests on the stand that is watched.
     *
     * @param guide at a simulated stand it should be one by hand
     * @param benches folder of the files of benches
     * @param scales where weights come from
     */
    public BucketModel(
            Background background,
            StandWatchModel watch,
            BucketGuide guide,
            BucketDesk desk,
            Path benches,
            ScaleModel scales,
            StopPress stop) {
        this.background = background;
        this.watch = watch;
        this.guide = guide;
        this.desk = desk;
        this.scales = scales;
        this.stop = stop;
        this.setUp = new BucketSetUp(background, benches, this::simulated);
        this.progress = new BucketProgress(background);
        setUp.planProperty().addListener((observed, old, now) -> showPlan());
        setUp.benchProperty().addListener((observed, old, now) -> showPlan());
        showPlan();
    }

    private void showPlan() {
        progress.begin(setUp.planProperty().get(), setUp.gateShare());
    }

    /** Begins. */
    public void begin(UnitSystem units) {
        BucketBench on = setUp.benchProperty().get().orElseThrow();
        BucketPlan by = setUp.planProperty().get();
        BucketPerson asked = new BucketPerson(name -> background.onScreen(() -> at(BucketStep.ofQuestion(name))));
        StopButton stopping = new StopButton();
        person = asked;
        button = stopping;
        complaint.set(Word.NONE);
        result.set(Optional.empty());
        showPlan();
        at(BucketStep.STARTING);
        StandDescription stand = watch.standProperty().get();
        BucketGuide.Order order = order(stand, on, by);
        String plate = setUp.serialProperty().get().strip();
        String who = setUp.technicianProperty().get().strip();
        Optional<ScaleModel.OnLine> scale =
                simulated() ? Optional.empty() : scales.chosenProperty().get();
        TestWatcher watcher = progress.watcher(on, by, new Scale());
        // From here on STOP ends it, also while the stand is still being let go of or reached.
        StopPress.Registration press = stop.register(stopping);
        StopPress.Registration now = stop.register(why -> guide.stopNow());
        Job job = watch.aside(
                () -> {
                    BucketGuide.Done done = carryOut(order, scale, asked, watcher, stopping, units);
                    background.onScreen(() -> at(BucketStep.WORKING_OUT));
                    return desk.keep(done, done.sheet().of(plate, who), stand.id(), units);
                },
                this::done);
        job.afterwards(() -> over(press, now));
    }

    private BucketGuide.Order order(StandDescription stand, BucketBench on, BucketPlan by) {
        return new BucketGuide.Order(
                stand.id(),
                watch.reach().port(),
                on.file(),
                by.duties(),
                by.runs(),
                by.seconds(),
                0,
                0,
                USUAL_CELSIUS,
                1,
                desk.folder());
    }

    private BucketGuide.Done carryOut(
            BucketGuide.Order order,
            Optional<ScaleModel.OnLine> scale,
            BucketPerson asked,
            TestWatcher watcher,
            StopButton stopping,
            UnitSystem units)
            throws OrderException, DataFileException, StandException {
        try {
            if (scale.isEmpty()) {
                return guide.carryOut(order, Optional.empty(), asked, watcher, stopping, units);
            }
            try (LineScale line = scales.opened(scale.get())) {
                return guide.carryOut(order, Optional.of(line), asked, watcher, stopping, units);
            }
        } catch (StandException e) {
            if (e.trouble() == StandException.Trouble.INTERRUPTED) {
                // Ended on purpose, which raises no trouble of its own; but where the runs before it are kept must be
                // told.
                background.onScreen(() -> background.trouble(Trouble.ended("bucket_ended", e.getMessage())));
            }
            throw e;
        }
    }

    /** Tells what the scale does while a test goes on. */
    private final class Scale implements BucketProgress.ScaleHearer {
        @Override
        public void shows(double grams) {
            scales.showed(grams);
            if (step.get() == BucketStep.SCALE) {
                at(answered.afterwards());
            }
        }

        @Override
        public void fails(String why) {
            complaint.set(Word.asIs(why));
        }
    }

    private void over(StopPress.Registration press, StopPress.Registration now) {
        now.close();
        press.close();
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
        Optional<Word> wrong = Grams.complaint(text);
        wrong.ifPresent(complaint::set);
        if (wrong.isEmpty()) {
            give(text);
        }
    }

    /** Whether the scale's reading can be taken instead of typing it. */
    public boolean scaleIsRead() {
        return simulated() || scales.chosenProperty().get().isPresent();
    }

    /** Whether the stand is simulated, and its bucket and scale with it. */
    public boolean simulated() {
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
            answered = now;
            at(now.weighs() && answer.isEmpty() && !simulated() ? BucketStep.SCALE : now.afterwards());
            person.give(answer);
        }
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
        showPlan();
        result.set(Optional.empty());
        at(BucketStep.PLAN);
    }

    private void at(BucketStep now) {
        step.set(now);
        sentence.set(now.sentence());
    }

    /** Where it is. */
    public ReadOnlyObjectProperty<BucketStep> stepProperty() {
        return step.getReadOnlyProperty();
    }

    /** What to do next, in one sentence. */
    public ReadOnlyObjectProperty<Word> sentenceProperty() {
        return sentence.getReadOnlyProperty();
    }

    /** What is wrong with a weight; {@link Word#NONE} when nothing is. */
    public ReadOnlyObjectProperty<Word> complaintProperty() {
        return complaint.getReadOnlyProperty();
    }

    /** What came of it. */
    public ReadOnlyObjectProperty<Optional<BucketDesk.Kept>> resultProperty() {
        return result.getReadOnlyProperty();
    }

    /** What is settled before. */
    public BucketSetUp setUp() {
        return setUp;
    }

    /** How far it has come. */
    public BucketProgress progress() {
        return progress;
    }

    /** Where its weights come from. */
    public ScaleModel scales() {
        return scales;
    }
}
