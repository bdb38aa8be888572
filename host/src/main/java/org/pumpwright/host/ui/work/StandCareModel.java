package org.pumpwright.host.ui.work;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.StandCheckUp;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.run.SafeState;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.conform.CheckResult;
import org.pumpwright.host.stand.conform.Conformance;
import org.pumpwright.host.stand.conform.Outcome;
import org.pumpwright.host.stand.conform.TrialStop;
import org.pumpwright.host.trace.Sample;

/** What is done for a stand: its calibrations looked through, its self-check, its board tried. JavaFX thread only. */
public final class StandCareModel {
    private final Background background;
    private final StandWatchModel watch;
    private final StandCare care;
    private final StopPress stop;
    private final Shelf shelf;
    private final Clock clock;
    private final ObservableList<Row> rows = FXCollections.observableArrayList();
    private final ObservableList<Row> rowsShown = FXCollections.unmodifiableObservableList(rows);
    private final ReadOnlyObjectWrapper<Word> headline = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Word> advice = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Mark> mark = new ReadOnlyObjectWrapper<>(Mark.UNKNOWN);
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper();
    private StopPress.Registration press = () -> {};

    /** Cares for the stand that is watched. */
    public StandCareModel(
            Background background, StandWatchModel watch, Stands stands, Shelf shelf, StopPress stop, Clock clock) {
        this.background = background;
        this.watch = watch;
        this.care = new StandCare(stands);
        this.stop = stop;
        this.shelf = shelf;
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

    /** What to do about all of them; {@link Word#NONE} when nothing. */
    public ReadOnlyObjectProperty<Word> adviceProperty() {
        return advice.getReadOnlyProperty();
    }

    /** How that stands. */
    public ReadOnlyObjectProperty<Mark> markProperty() {
        return mark.getReadOnlyProperty();
    }

    /** True while something is being done with the stand. */
    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** How far that has come, 0 to 1. */
    public ReadOnlyDoubleProperty shareProperty() {
        return share.getReadOnlyProperty();
    }

    /** Looks through the calibrations; needs no stand. */
    public void showCalibrations() {
        List<Row> found = CalibrationRows.of(watch.standProperty().get(), LocalDate.now(clock));
        rows.setAll(found);
        Mark worst = CareRows.worst(found);
        say(worst, Word.of("ui.stand.calibrations." + worst.style()));
        boolean missing = found.stream().anyMatch(row -> row.finding().key().equals("ui.stand.not_calibrated"));
        advice.set(missing ? Word.of("ui.stand.calibrate") : Word.NONE);
    }

    /** Has the stand check itself: it arms, and drives nothing. */
    public void check() {
        StopButton button = new StopButton();
        begin(Word.of("ui.stand.checking"), button::press);
        StandDescription description = watch.standProperty().get();
        Stands.Reach reach = watch.reach();
        LocalDate today = LocalDate.now(clock);
        follow(watch.aside(() -> care.check(description, reach, today, button, this::heard), this::checked));
    }

    /** Shows in the strip what the check reads, and how far it has come; on the worker thread. */
    private void heard(StandDescription description, Sample first, Sample now) {
        watch.heard(description.channels(), first, now);
        double seconds = now.boardSeconds() - first.boardSeconds();
        background.onScreen(() -> share.set(seconds / StandCheckUp.SECONDS));
    }

    private void checked(StandCheckUp.Finding finding) {
        if (StandCare.wasStopped(finding)) {
            stopped(finding.outcome().safe());
            return;
        }
        rows.setAll(CareRows.checks(finding));
        say(finding.fit() ? Mark.GOOD : Mark.BAD, Word.of(finding.fit() ? "ui.stand.fit" : "ui.stand.not_fit"));
    }

    /** Tries the board against the wire protocol, without a person to press things; drives a little for moments. */
    public void tryBoard() {
        int all = Conformance.names().size();
        TrialStop button = new TrialStop();
        begin(Word.of("ui.stand.trying", 0, all), button::press);
        StandDescription description = watch.standProperty().get();
        Stands.Reach reach = StandCare.atOnce(watch.reach());
        follow(watch.aside(
                () -> care.trial(
                        description,
                        reach,
                        button,
                        result -> background.onScreen(() -> tried(result, rows.size() + 1, all))),
                this::tried));
    }

    /** The newest on top: the person sees what is going on without touching the list. */
    private void tried(CheckResult result, int done, int all) {
        if (busy.get()) {
            rows.add(0, CareRows.row(result));
            share.set((double) done / all);
            headline.set(Word.of("ui.stand.trying", done, all));
        }
    }

    private void tried(StandCare.Tried over) {
        if (over.finding().isEmpty()) {
            stopped(over.safe() ? SafeState.CONFIRMED : SafeState.NOT_CONFIRMED);
            return;
        }
        Conformance.Finding finding = over.finding().get();
        rows.setAll(StandCare.worstFirst(finding).stream().map(CareRows::row).toList());
        String key = finding.conforms() ? "ui.stand.conforms" : "ui.stand.does_not_conform";
        int held = finding.with(Outcome.HELD).size();
        int missing = finding.with(Outcome.NOT_POSSIBLE).size();
        say(
                finding.conforms() ? Mark.GOOD : Mark.BAD,
                Word.of(key, held, finding.broken().size(), missing));
    }

    private void stopped(SafeState safe) {
        rows.setAll(CareRows.safe(safe));
        say(safe == SafeState.CONFIRMED ? Mark.WATCH : Mark.BAD, Word.of("ui.stand.stopped"));
    }

    /** Every stand that the shop has described; the choice is given to the screen. */
    public void stands(Consumer<List<StandDescription>> found) {
        background.run(shelf::stands, found);
    }

    /** From here on STOP ends it, also while the stand is still being let go of or reached. */
    private void begin(Word what, Consumer<String> stopping) {
        press = stop.register(stopping);
        busy.set(true);
        share.set(0);
        rows.clear();
        say(Mark.UNKNOWN, what);
    }

    private void follow(Job job) {
        job.afterwards(this::over);
    }

    private void over() {
        press.close();
        busy.set(false);
        if (mark.get() == Mark.UNKNOWN) {
            say(Mark.WATCH, Word.of("ui.stand.ended"));
        }
    }

    private void say(Mark how, Word what) {
        mark.set(how);
        headline.set(what);
        advice.set(Word.NONE);
    }
}
