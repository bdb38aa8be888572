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
import org.pumpwright.host.stand.StandException;
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
    private final ReadOnlyObjectWrapper<LinkState> link = new ReadOnlyObjectWrapper<>(LinkState.OFF);
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
        silent(LinkState.OFF);
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

    /** Its channels while nothing is heard: their names and limits, without a value. */
    public List<Reading> unread() {
        return ChannelWords.unread(stand.get().channels());
    }

    /** Whether it is being watched. */
    public ReadOnlyBooleanProperty watchingProperty() {
        return watching.getReadOnlyProperty();
    }

    /** How it stands with the stand. */
    public ReadOnlyObjectProperty<LinkState> linkProperty() {
        return link.getReadOnlyProperty();
    }

    /** Begins to watch. */
    public void start() {
        wanted = true;
        if (asides > 0 || watching.get()) {
            return;
        }
        watching.set(true);
        silent(LinkState.REACHING);
        StandDescription description = stand.get();
        Stands.Reach reach = reach();
        job = background.repeat(
                () -> StandKeeper.opened(
                        () -> StandWatch.opened(stands, description, reach, this::heard),
                        failure -> background.onScreen(() -> lostForNow(failure))),
                this::lost);
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
        own.afterwards(this::resume);
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
        silent(LinkState.OFF);
    }

    /**
     * The JavaFX thread was held up for at least this long, ms. That stands in the place of the calibrations, the last one: they can
     * wait until the next sample, and there is no room for one more.
     */
    public void screenHeldUp(int millis) {
        List<Tick> all = new ArrayList<>(ticks.subList(0, Math.min(ticks.size(), StandTicks.COUNT - 1)));
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
            silent(LinkState.OFF);
        }
    }

    private void resume() {
        asides--;
        if (wanted) {
            start();
        } else if (asides == 0) {
            // What the work was heard to read last is no longer true.
            silent(LinkState.OFF);
        }
    }

    /** It was not there to begin with. */
    private void lost(Throwable failure) {
        watching.set(false);
        wanted = false;
        job = null;
        silent(LinkState.LOST);
        link.set(LinkState.OFF);
        background.trouble(Trouble.of(failure));
    }

    /** It went away while it was watched; it is looked for until it is back, or until nobody wants it any more. */
    private void lostForNow(StandException failure) {
        if (watching.get()) {
            silent(LinkState.LOST);
            background.trouble(
                    new Trouble(Trouble.of(failure).what(), Word.of("ui.trouble.watch_lost.do"), failure.getMessage()));
        }
    }

    private void show() {
        Heard heard = latest.getAndSet(null);
        if (heard != null) {
            ticks.setAll(StandTicks.heard(heard.channels(), today(), heard.now()));
            link.set(LinkState.HEARD);
            readings.setAll(ChannelWords.readings(heard.channels(), heard.before(), heard.now()));
        }
    }

    private void silent(LinkState state) {
        latest.set(null);
        link.set(state);
        readings.clear();
        ticks.setAll(StandTicks.unheard(stand.get().channels(), today(), state));
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }
}
