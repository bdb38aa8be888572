package org.pumpwright.host.ui.work;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Sample;

/**
 * The stand between the runs: what it reads and how it stands, watched without arming it. Only one can have a stand at a time, so work that
 * needs it goes through {@link #aside}. JavaFX thread only, but for {@link #heard}.
 */
public final class StandWatchModel {
    private final Background background;
    private final Stands stands;
    private final Clock clock;
    private final ReadOnlyObjectWrapper<StandDescription> stand = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper watching = new ReadOnlyBooleanWrapper();
    private final ObservableList<Tick> ticks = FXCollections.observableArrayList();
    private final ObservableList<Reading> readings = FXCollections.observableArrayList();
    private final ObservableList<Tick> ticksShown = FXCollections.unmodifiableObservableList(ticks);
    private final ObservableList<Reading> readingsShown = FXCollections.unmodifiableObservableList(readings);
    private final AtomicReference<@Nullable Heard> latest = new AtomicReference<>();
    private Optional<String> port = Optional.empty();
    private boolean wanted;
    private int asides;
    private @Nullable Job job;

    private record Heard(Channels channels, Sample before, Sample now) {}

    /** Watches stands on this background. */
    public StandWatchModel(Background background, Stands stands, Clock clock) {
        this.background = background;
        this.stands = stands;
        this.clock = clock;
    }

    /** Chooses the stand; it is not reached yet. */
    public void choose(StandDescription description, Optional<String> givenPort) {
        stop();
        port = givenPort;
        stand.set(description);
        silent(Mark.UNKNOWN, "off");
    }

    /** The stand. */
    public ReadOnlyObjectProperty<StandDescription> standProperty() {
        return stand.getReadOnlyProperty();
    }

    /** How it is reached, in real time, with a healthy unit where it is simulated. */
    public Stands.Reach reach() {
        boolean simulated = stand.get().connection() instanceof Connection.Simulated;
        OptionalDouble pace = simulated ? OptionalDouble.of(1) : OptionalDouble.empty();
        return new Stands.Reach(port, Optional.empty(), pace, Map.of());
    }

    /** Its health. */
    public ObservableList<Tick> ticks() {
        return ticksShown;
    }

    /** What its channels read; empty while nothing is heard. */
    public ObservableList<Reading> readings() {
        return readingsShown;
    }

    /** Whether it is being watched. */
    public ReadOnlyBooleanProperty watchingProperty() {
        return watching.getReadOnlyProperty();
    }

    /** Begins to watch. */
    public void start() {
        wanted = true;
        if (asides > 0 || watching.get()) {
            return;
        }
        watching.set(true);
        silent(Mark.UNKNOWN, "reaching");
        StandDescription description = stand.get();
        Stands.Reach reach = reach();
        job = background.repeat(
                () -> StandWatch.opened(stands, description, reach, this::heard), failure -> lost(failure));
    }

    /** Ends watching; the stand is given up soon after. */
    public void stop() {
        wanted = false;
        pause();
    }

    /**
     * Does work that needs the stand for itself: the watch lets go of it first, and takes it up again afterwards.
     *
     * @param work on a worker thread
     * @param done takes its result, on the JavaFX thread
     */
    public <T> Job aside(Callable<T> work, Consumer<? super T> done) {
        asides++;
        Job watch = job;
        pause();
        Job own = background.run(
                () -> {
                    if (watch != null) {
                        watch.await();
                    }
                    return work.call();
                },
                done);
        if (own.runningProperty().get()) {
            own.runningProperty().addListener((observed, old, now) -> resume());
        } else {
            resume();
        }
        return own;
    }

    /** Shows a sample, whoever took it; a run calls this with its own. Any thread. */
    public void heard(Channels channels, Sample before, Sample now) {
        if (latest.getAndSet(new Heard(channels, before, now)) == null) {
            background.onScreen(this::show);
        }
    }

    /** What was heard last no longer holds, and nothing newer is known: until something is heard again. */
    public void nothingHeard() {
        silent(Mark.UNKNOWN, "off");
    }

    /** The JavaFX thread was held up for at least this long, ms. */
    public void screenHeldUp(int millis) {
        List<Tick> all = new ArrayList<>(ticks.subList(0, Math.min(ticks.size(), StandTicks.COUNT)));
        all.add(StandTicks.screen(millis));
        ticks.setAll(all);
    }

    private void pause() {
        if (job != null) {
            job.cancel();
            job = null;
        }
        if (watching.get()) {
            watching.set(false);
            silent(Mark.UNKNOWN, "off");
        }
    }

    private void resume() {
        asides--;
        if (wanted) {
            start();
        } else if (asides == 0) {
            // What the work was heard to read last is no longer true.
            silent(Mark.UNKNOWN, "off");
        }
    }

    private void lost(Throwable failure) {
        watching.set(false);
        wanted = false;
        job = null;
        silent(Mark.BAD, "lost");
        background.trouble(Trouble.of(failure));
    }

    private void show() {
        Heard heard = latest.getAndSet(null);
        if (heard != null) {
            ticks.setAll(StandTicks.heard(heard.channels(), today(), heard.now()));
            readings.setAll(ChannelWords.readings(heard.channels(), heard.before(), heard.now()));
        }
    }

    private void silent(Mark link, String state) {
        latest.set(null);
        readings.clear();
        ticks.setAll(StandTicks.unheard(stand.get().channels(), today(), link, state));
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }
}
