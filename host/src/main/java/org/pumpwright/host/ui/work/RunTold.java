package org.pumpwright.host.ui.work;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Plan;
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
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Sample;

/** Turns what one run tells into what is seen, asked and signalled. JavaFX thread only, as the feed calls it there. */
final class RunTold implements RunFeed.Taker {
    private final RunView view;
    private final RunQuestions questions;
    private final StandWatchModel watch;
    private final Channels channels;
    private final Consumer<Happening> signals;
    private final SweepSketch sketch = new SweepSketch();
    private Phase phase = Phase.RESTING;
    private int points;
    private int pointsDone;
    private int steps;
    private double expectedSeconds;

    RunTold(
            RunView view,
            RunQuestions questions,
            StandWatchModel watch,
            Channels channels,
            Consumer<Happening> signals) {
        this.view = view;
        this.questions = questions;
        this.watch = watch;
        this.channels = channels;
        this.signals = signals;
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
            step(begun);
        } else if (event instanceof PointDone done) {
            pointsDone++;
            sketch.done(done.point(), done.mean());
        } else if (event instanceof Asked asked) {
            ask(asked.question());
        } else if (event instanceof NotAnAnswer not) {
            ask(not.question());
        } else if (event instanceof RunEvent.Answered) {
            questions.answered();
        } else if (event instanceof Ended) {
            measured();
        }
    }

    private void step(StepBegan begun) {
        steps++;
        view.headline(Word.of("ui.run.step", begun.step().name()));
        if (steps > 1) {
            signals.accept(Happening.STEP);
        }
    }

    private void ask(Ask asked) {
        // The stand was made safe for the question; its last sample still says that it is armed.
        watch.nothingHeard();
        questions.ask(asked);
        signals.accept(Happening.ALARM);
    }

    private void measured() {
        watch.nothingHeard();
        sketch.rest();
        questions.answered();
        view.headline(Word.of("ui.run.grading"));
    }

    private void live(Live live) {
        watch.heard(channels, live.from(), live.to());
        LiveValues now = live.now();
        sketch.live(live.where().duty(), now);
        view.flow(now.flow());
        view.progress(expectedSeconds > 0 ? 1 - live.secondsLeft() / expectedSeconds : 0);
        view.left(Word.of("ui.run.left", clock(live.secondsLeft())));
        view.detail(where(live));
        if (live.phase() == Phase.MEASURING && phase == Phase.SETTLING) {
            signals.accept(Happening.SETTLED);
        }
        phase = live.phase();
        view.add(strip(live.to(), now));
    }

    private StripSample strip(Sample sample, LiveValues now) {
        Optional<AnalogChannel> pressure = channels.analog(ChannelRole.OUTLET_PRESSURE);
        return new StripSample(
                sample.boardSeconds(),
                now.flow().m3PerSecond(),
                now.voltsAtPins(),
                now.supplyAmps(),
                pressure.map(channel -> channel.read(sample)).orElse(Double.NaN));
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

    @Override
    public void asksWhy() {
        questions.askWhy();
    }

    @Override
    public void show() {
        view.show(sketch.view());
    }
}
