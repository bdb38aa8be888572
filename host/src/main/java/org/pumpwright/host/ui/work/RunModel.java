package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.trace.Channels;

/**
 * A run from the order to what came of it: {@link RunView} is what can be seen of it, {@link RunQuestions} what it asks. JavaFX thread only.
 */
public final class RunModel {
    private final Background background;
    private final StandWatchModel watch;
    private final Acceptance acceptance;
    private final StopPress stop;
    private final WorkInHand work;
    private final OptionalDouble pace;
    private final RunView view = new RunView();
    private final RunQuestions questions = new RunQuestions();
    private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper pausable = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Word> pretence = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final List<Consumer<Happening>> hearers = new ArrayList<>();

    /**
     * Runs what is in hand.
     *
     * @param pace of simulated stands: virtual seconds in a second; empty for as fast as it goes
     */
    public RunModel(
            Background background,
            StandWatchModel watch,
            Acceptance acceptance,
            StopPress stop,
            WorkInHand work,
            OptionalDouble pace) {
        this.background = background;
        this.watch = watch;
        this.acceptance = acceptance;
        this.stop = stop;
        this.work = work;
        this.pace = pace;
        work.orderProperty().addListener((observed, old, now) -> {
            if (!running.get()) {
                clear(Word.of(now.isPresent() ? "ui.run.waiting" : "ui.run.idle"));
            }
            pretend();
        });
        watch.standProperty().addListener((observed, old, now) -> pretend());
    }

    private void pretend() {
        Optional<WorkOrder> order = work.orderProperty().get();
        if (!running.get()) {
            pretence.set(
                    order.map(each -> Pretence.of(each, watch.standProperty().get()))
                            .orElse(Word.NONE));
        }
    }

    /** Has this told of what ear and eye are to be told of. */
    public void onHappening(Consumer<Happening> hearer) {
        hearers.add(hearer);
    }

    private void tell(Happening what) {
        List.copyOf(hearers).forEach(hearer -> hearer.accept(what));
    }

    /**
     * Begins the run of the unit in hand; nothing happens while one goes on, or without a unit.
     *
     * @param units of the papers
     */
    public void begin(UnitSystem units) {
        if (running.get() || work.orderProperty().get().isEmpty()) {
            return;
        }
        WorkOrder order = work.orderProperty().get().get();
        StandDescription stand = watch.standProperty().get();
        boolean simulated = order.practice().isPresent() || stand.connection() instanceof Connection.Simulated;
        clear(Word.of("ui.run.reaching"));
        work.resultProperty().set(Optional.empty());
        running.set(true);
        work.busyProperty().set(true);
        pausable.set(!simulated);
        Channels channels = stand.channels().withFlowMeter(order.plan().wiring().meter());
        DeskOperator person = new DeskOperator(ask -> {});
        RunFeed feed = new RunFeed(background, new RunTold(view, questions, watch, channels, this::tell));
        questions.begin(person, feed);
        Acceptance.Order whole =
                order.order(stand.id(), watch.reach().port(), simulated ? pace : OptionalDouble.empty(), units);
        // From this key on: the stand is not even reached yet, but a STOP must not be lost meanwhile.
        StopButton button = new StopButton();
        StopPress.Registration stopping = stop.register(button);
        Job job = watch.aside(() -> acceptance.carryOut(whole, feed, button, person), this::over);
        job.afterwards(() -> ended(stopping));
    }

    private void clear(Word first) {
        view.clear(first);
        questions.end();
    }

    private void over(Acceptance.Result result) {
        Verdict verdict = result.record().grade().verdict();
        view.progress(1);
        view.say(Word.of("ui.run.over"), Word.stored(result.record().ending().reason()));
        result.kept().trouble().ifPresent(trouble -> background.trouble(Trouble.named("record", trouble)));
        if (!result.record().ending().completed()) {
            background.trouble(
                    Trouble.named("run_ended", result.record().ending().reason()));
        }
        work.resultProperty().set(Optional.of(result));
        tell(verdict == Verdict.INVALID ? Happening.ALARM : Happening.VERDICT);
    }

    private void ended(StopPress.Registration stopping) {
        stopping.close();
        running.set(false);
        work.busyProperty().set(false);
        pausable.set(false);
        questions.end();
        view.left(Word.NONE);
        pretend();
        if (work.resultProperty().get().isEmpty()) {
            view.say(Word.of("ui.run.failed"), Word.of("ui.run.failed.do"));
        }
    }

    /** Pauses the run before its next point. */
    public void pause() {
        if (pausable.get()) {
            questions.pauseSoon();
        }
    }

    /** Ends the run at once, as STOP does; the unit is then not judged. */
    public void end() {
        if (running.get()) {
            stop.press("the technician ended the run");
        }
    }

    /** What can be seen of it. */
    public RunView view() {
        return view;
    }

    /** What it asks. */
    public RunQuestions questions() {
        return questions;
    }

    /** Whether a run goes on. */
    public ReadOnlyBooleanProperty runningProperty() {
        return running.getReadOnlyProperty();
    }

    /** Whether it could be paused. */
    public ReadOnlyBooleanProperty pausableProperty() {
        return pausable.getReadOnlyProperty();
    }

    /** Why it is no test of a real part; {@link Word#NONE} when it is one. */
    public ReadOnlyObjectProperty<Word> pretenceProperty() {
        return pretence.getReadOnlyProperty();
    }
}
