package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.run.RunEvent;
import org.pumpwright.host.run.RunEvent.Asked;
import org.pumpwright.host.run.RunEvent.Began;
import org.pumpwright.host.run.RunEvent.Ended;
import org.pumpwright.host.run.RunEvent.Live;
import org.pumpwright.host.run.RunEvent.LiveValues;
import org.pumpwright.host.run.RunEvent.NotAnAnswer;
import org.pumpwright.host.run.RunEvent.Phase;
import org.pumpwright.host.run.RunEvent.PointDone;
import org.pumpwright.host.run.RunEvent.StepBegan;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Sample;

/** A run while it goes on, from the order to what came of it. JavaFX thread only. */
public final class RunModel {
    private final Background background;
    private final StandWatchModel watch;
    private final Acceptance acceptance;
    private final StopPress stop;
    private final WorkInHand work;
    private final OptionalDouble pace;
    private final SweepSketch sketch = new SweepSketch();
    private final List<StripSample> strip = new ArrayList<>();
    private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper pausable = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper asksWhy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Word> headline = new ReadOnlyObjectWrapper<>(Word.of("ui.run.idle"));
    private final ReadOnlyObjectWrapper<Word> detail = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Word> left = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<FlowRate> flow = new ReadOnlyObjectWrapper<>(new FlowRate(0));
    private final ReadOnlyObjectWrapper<SweepView> sweep = new ReadOnlyObjectWrapper<>(SweepView.EMPTY);
    private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper();
    private final ReadOnlyIntegerWrapper stripSize = new ReadOnlyIntegerWrapper();
    private final ReadOnlyObjectWrapper<Optional<Ask>> question = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final List<Consumer<Happening>> hearers = new ArrayList<>();
    private Phase phase = Phase.RESTING;
    private int points;
    private int pointsDone;
    private int steps;
    private double expectedSeconds;
    private @Nullable DeskOperator person;
    private @Nullable RunFeed feed;
    private Optional<StripSample> newest = Optional.empty();

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
        });
    }

    /** Has this told of what ear and eye are to be told of. */
    public void onHappening(Consumer<Happening> hearer) {
        hearers.add(hearer);
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
        DeskOperator asked = new DeskOperator(ask -> {});
        RunFeed fed = new RunFeed(background, new Shown(channels));
        person = asked;
        feed = fed;
        Acceptance.Order whole =
                order.order(stand.id(), watch.reach().port(), simulated ? pace : OptionalDouble.empty(), units);
        Job job = watch.aside(() -> carryOut(whole, fed, asked), this::over);
        if (job.runningProperty().get()) {
            job.runningProperty().addListener((observed, old, now) -> ended());
        } else {
            ended();
        }
    }

    private Acceptance.Result carryOut(Acceptance.Order order, RunFeed told, DeskOperator asked) throws Exception {
        StopButton button = new StopButton();
        StopPress.Registration stopping = stop.register(button);
        try {
            return acceptance.carryOut(order, told, button, asked);
        } finally {
            stopping.close();
        }
    }

    private void clear(Word first) {
        sketch.rest();
        strip.clear();
        stripSize.set(0);
        sweep.set(SweepView.EMPTY);
        newest = Optional.empty();
        headline.set(first);
        detail.set(Word.NONE);
        left.set(Word.NONE);
        progress.set(0);
        flow.set(new FlowRate(0));
        question.set(Optional.empty());
        asksWhy.set(false);
        phase = Phase.RESTING;
        points = 0;
        pointsDone = 0;
        steps = 0;
    }

    private void over(Acceptance.Result result) {
        Verdict verdict = result.record().grade().verdict();
        progress.set(1);
        headline.set(Word.of("ui.run.over"));
        detail.set(Stored.sentence(result.record().ending().reason()));
        result.kept().trouble().ifPresent(trouble -> background.trouble(Trouble.named("record", trouble)));
        if (!result.record().ending().completed()) {
            background.trouble(
                    Trouble.named("run_ended", result.record().ending().reason()));
        }
        work.resultProperty().set(Optional.of(result));
        tell(verdict == Verdict.INVALID ? Happening.ALARM : Happening.VERDICT);
    }

    private void ended() {
        running.set(false);
        work.busyProperty().set(false);
        pausable.set(false);
        asksWhy.set(false);
        question.set(Optional.empty());
        left.set(Word.NONE);
        if (work.resultProperty().get().isEmpty()) {
            headline.set(Word.of("ui.run.failed"));
            detail.set(Word.of("ui.run.failed.do"));
        }
    }

    private void tell(Happening what) {
        List.copyOf(hearers).forEach(hearer -> hearer.accept(what));
    }

    /** What the run tells; confined to the JavaFX thread, as the feed calls it there. */
    private final class Shown implements RunFeed.Taker {
        private final Channels channels;

        Shown(Channels channels) {
            this.channels = channels;
        }

        @Override
        public void begins(Plan plan, Optional<HealthyCurve> curve) {
            sketch.begin(plan, curve);
        }

        @Override
        public void heard(RunEvent event) {
            if (event instanceof Live live) {
                live(live);
            } else if (event instanceof Began began) {
                points = began.points();
                expectedSeconds = began.expectedSeconds();
            } else if (event instanceof StepBegan begun) {
                steps++;
                headline.set(Word.of("ui.run.step", begun.step().name()));
                if (steps > 1) {
                    tell(Happening.STEP);
                }
            } else if (event instanceof PointDone done) {
                pointsDone++;
                sketch.done(done.point(), done.mean());
            } else if (event instanceof Asked asked) {
                ask(asked.question());
            } else if (event instanceof NotAnAnswer not) {
                ask(not.question());
            } else if (event instanceof RunEvent.Answered) {
                question.set(Optional.empty());
            } else if (event instanceof Ended) {
                watch.nothingHeard();
                sketch.rest();
                question.set(Optional.empty());
                headline.set(Word.of("ui.run.grading"));
            }
        }

        private void live(Live live) {
            watch.heard(channels, live.from(), live.to());
            LiveValues now = live.now();
            sketch.live(live.where().duty(), now);
            flow.set(now.flow());
            double share = expectedSeconds > 0 ? 1 - live.secondsLeft() / expectedSeconds : 0;
            progress.set(Math.max(progress.get(), Math.min(1, Math.max(0, share))));
            left.set(Word.of("ui.run.left", clock(live.secondsLeft())));
            detail.set(where(live));
            if (live.phase() == Phase.MEASURING && phase == Phase.SETTLING) {
                tell(Happening.SETTLED);
            }
            phase = live.phase();
            strip(live.to(), now);
        }

        private void strip(Sample sample, LiveValues now) {
            double second = sample.boardSeconds();
            if (newest.filter(last -> last.second() >= second).isPresent()) {
                return;
            }
            Optional<AnalogChannel> pressure = channels.analog(ChannelRole.OUTLET_PRESSURE);
            StripSample one = new StripSample(
                    second,
                    now.flow().m3PerSecond(),
                    now.voltsAtPins(),
                    now.supplyAmps(),
                    pressure.map(channel -> channel.read(sample)).orElse(Double.NaN));
            newest = Optional.of(one);
            strip.add(one);
        }

        @Override
        public void asksWhy() {
            asksWhy.set(true);
        }

        @Override
        public void show() {
            sweep.set(sketch.view());
            stripSize.set(strip.size());
        }
    }

    private void ask(Ask asked) {
        // The stand was made safe for the question; its last sample still says that it is armed.
        watch.nothingHeard();
        question.set(Optional.empty());
        question.set(Optional.of(asked));
        tell(Happening.ALARM);
    }

    private Word where(Live live) {
        String key = "ui.run.phase." + live.phase().name().toLowerCase(Locale.ROOT);
        if (live.phase() == Phase.RESTING) {
            return Word.of(key);
        }
        Word doing = Word.of(key, live.where().duty().print());
        return points > 0 && (live.phase() == Phase.SETTLING || live.phase() == Phase.MEASURING)
                ? Word.of("ui.run.point", Math.min(points, pointsDone + 1), points, doing)
                : doing;
    }

    private static String clock(double seconds) {
        long whole = Math.max(0, Math.round(seconds));
        return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
    }

    /** Answers the question that stands. */
    public void answer(Ask.Answer answer) {
        question.set(Optional.empty());
        if (person != null) {
            person.answered(answer.word());
        }
    }

    /** Pauses the run before its next point. */
    public void pause() {
        if (person != null && pausable.get()) {
            person.pauseSoon();
        }
    }

    /** Ends the run at once, as STOP does; the unit is then not judged. */
    public void end() {
        if (running.get()) {
            stop.press("the technician ended the run");
        }
    }

    /** Says why the run was stopped; empty when nobody wants to. */
    public void because(Optional<WhyStopped> why) {
        asksWhy.set(false);
        if (feed != null) {
            feed.said(why.map(WhyStopped::words));
        }
    }

    /** What the strip chart shows, oldest first; it grows, and is emptied when a run begins. */
    public List<StripSample> strip() {
        return Collections.unmodifiableList(strip);
    }

    /** How much of {@link #strip} is to be shown. */
    public ReadOnlyIntegerProperty stripSizeProperty() {
        return stripSize.getReadOnlyProperty();
    }

    /** Whether a run goes on. */
    public ReadOnlyBooleanProperty runningProperty() {
        return running.getReadOnlyProperty();
    }

    /** Whether it could be paused. */
    public ReadOnlyBooleanProperty pausableProperty() {
        return pausable.getReadOnlyProperty();
    }

    /** Whether somebody is to say why the run was stopped. */
    public ReadOnlyBooleanProperty asksWhyProperty() {
        return asksWhy.getReadOnlyProperty();
    }

    /** Which step, or what has come of it. */
    public ReadOnlyObjectProperty<Word> headlineProperty() {
        return headline.getReadOnlyProperty();
    }

    /** Which point, and what is being done there. */
    public ReadOnlyObjectProperty<Word> detailProperty() {
        return detail.getReadOnlyProperty();
    }

    /** How much time is left. */
    public ReadOnlyObjectProperty<Word> leftProperty() {
        return left.getReadOnlyProperty();
    }

    /** The flow of the moment. */
    public ReadOnlyObjectProperty<FlowRate> flowProperty() {
        return flow.getReadOnlyProperty();
    }

    /** The sweep so far. */
    public ReadOnlyObjectProperty<SweepView> sweepProperty() {
        return sweep.getReadOnlyProperty();
    }

    /** How far the plan is, 0 to 1. */
    public ReadOnlyDoubleProperty progressProperty() {
        return progress.getReadOnlyProperty();
    }

    /** The plan's question that waits for an answer. */
    public ReadOnlyObjectProperty<Optional<Ask>> questionProperty() {
        return question.getReadOnlyProperty();
    }
}
