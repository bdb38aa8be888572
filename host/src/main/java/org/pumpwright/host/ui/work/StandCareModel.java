package org.pumpwright.host.ui.work;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.StandCheckUp;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.conform.CheckResult;
import org.pumpwright.host.stand.conform.Conformance;
import org.pumpwright.host.stand.conform.Outcome;
import org.pumpwright.host.stand.conform.Provoker;

/** What is done for a stand: its calibrations looked through, its self-check, its board tried. JavaFX thread only. */
public final class StandCareModel {
    private final Background background;
    private final StandWatchModel watch;
    private final Stands stands;
    private final Shelf shelf;
    private final StopPress stop;
    private final Clock clock;
    private final ObservableList<Row> rows = FXCollections.observableArrayList();
    private final ObservableList<Row> rowsShown = FXCollections.unmodifiableObservableList(rows);
    private final ReadOnlyObjectWrapper<Word> headline = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Mark> mark = new ReadOnlyObjectWrapper<>(Mark.UNKNOWN);
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();

    /** Cares for the stand that is watched. */
    public StandCareModel(
            Background background, StandWatchModel watch, Stands stands, Shelf shelf, StopPress stop, Clock clock) {
        this.background = background;
        this.watch = watch;
        this.stands = stands;
        this.shelf = shelf;
        this.stop = stop;
        this.clock = clock;
    }

    /** What was found last. */
    public ObservableList<Row> rows() {
        return rowsShown;
    }

    /** What the rows come to. */
    public ReadOnlyObjectProperty<Word> headlineProperty() {
        return headline.getReadOnlyProperty();
    }

    /** How that stands. */
    public ReadOnlyObjectProperty<Mark> markProperty() {
        return mark.getReadOnlyProperty();
    }

    /** True while something is being done with the stand. */
    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** Looks through the calibrations; needs no stand. */
    public void showCalibrations() {
        LocalDate today = LocalDate.now(clock);
        List<Row> found = CareRows.calibrations(watch.standProperty().get().channels(), today);
        rows.setAll(found);
        say(
                CareRows.worst(found),
                Word.of("ui.stand.calibrations." + CareRows.worst(found).style()));
    }

    /** Has the stand check itself: it arms, and drives nothing. */
    public void check() {
        begin("ui.stand.checking");
        StandDescription description = watch.standProperty().get();
        Stands.Reach reach = watch.reach();
        LocalDate today = LocalDate.now(clock);
        follow(watch.aside(() -> checkUp(description, reach, today), this::checked));
    }

    private StandCheckUp.Finding checkUp(StandDescription description, Stands.Reach reach, LocalDate today)
            throws Exception {
        try (Stand stand = stands.reach(description, reach, UnitKind.PUMP_12V).stand()) {
            StopPress.Registration stopping = stop.register((Consumer<String>) why -> stand.makeSafe());
            try {
                return StandCheckUp.of(stand, today);
            } finally {
                stopping.close();
            }
        }
    }

    private void checked(StandCheckUp.Finding finding) {
        rows.setAll(CareRows.checks(finding));
        say(finding.fit() ? Mark.GOOD : Mark.BAD, Word.of(finding.fit() ? "ui.stand.fit" : "ui.stand.not_fit"));
    }

    /** Tries the board against the wire protocol, without a person to press things; drives a little for moments. */
    public void tryBoard() {
        begin("ui.stand.trying");
        StandDescription description = watch.standProperty().get();
        // A simulated board need not take its time here.
        Stands.Reach reach = new Stands.Reach(watch.reach().port(), Optional.empty(), OptionalDouble.empty(), Map.of());
        follow(watch.aside(() -> conformance(description, reach), this::tried));
    }

    private Conformance.Finding conformance(StandDescription description, Stands.Reach reach) throws Exception {
        Thread worker = Thread.currentThread();
        // Interrupted, the script lets go of the line, and the board makes itself safe by its own link time-out.
        StopPress.Registration stopping = stop.register((Consumer<String>) why -> worker.interrupt());
        try {
            return stands.conformance(description, reach, Provoker.NONE, this::told);
        } finally {
            stopping.close();
        }
    }

    private void told(CheckResult result) {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("STOP was pressed");
        }
        background.onScreen(() -> rows.add(CareRows.row(result)));
    }

    private void tried(Conformance.Finding finding) {
        rows.setAll(finding.checks().stream().map(CareRows::row).toList());
        String key = finding.conforms() ? "ui.stand.conforms" : "ui.stand.does_not_conform";
        int held = finding.with(Outcome.HELD).size();
        int missing = finding.with(Outcome.NOT_POSSIBLE).size();
        say(
                finding.conforms() ? Mark.GOOD : Mark.BAD,
                Word.of(key, held, finding.broken().size(), missing));
    }

    /** Every stand that the shop has described; the choice is given to the screen. */
    public void stands(Consumer<List<StandDescription>> found) {
        background.run(shelf::stands, found);
    }

    private void begin(String key) {
        busy.set(true);
        rows.clear();
        say(Mark.UNKNOWN, Word.of(key));
    }

    private void follow(Job job) {
        if (job.runningProperty().get()) {
            job.runningProperty().addListener((observed, old, now) -> over());
        } else {
            over();
        }
    }

    private void over() {
        busy.set(false);
        if (mark.get() == Mark.UNKNOWN) {
            say(Mark.WATCH, Word.of("ui.stand.ended"));
        }
    }

    private void say(Mark how, Word what) {
        mark.set(how);
        headline.set(what);
    }
}
