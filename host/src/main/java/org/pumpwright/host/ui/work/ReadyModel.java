package org.pumpwright.host.ui.work;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.StandCheckUp;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.grade.Decision;
import org.pumpwright.host.grade.Handling;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Nozzle;

/** A unit is put on the stand: what to mind, what to connect, and whether the stand is fit. JavaFX thread only. */
public final class ReadyModel {
    private final StandWatchModel watch;
    private final Stands stands;
    private final StopPress stop;
    private final Clock clock;
    private final WorkInHand work;
    private final ObservableList<Row> connect = FXCollections.observableArrayList();
    private final ObservableList<Row> connectShown = FXCollections.unmodifiableObservableList(connect);
    private final ObservableList<Row> checks = FXCollections.observableArrayList();
    private final ObservableList<Row> checksShown = FXCollections.unmodifiableObservableList(checks);
    private final ReadOnlyObjectWrapper<Word> headline = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Word> remedy = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Mark> mark = new ReadOnlyObjectWrapper<>(Mark.UNKNOWN);
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private boolean told;

    /** Makes the stand that is watched ready for the unit in hand. */
    public ReadyModel(StandWatchModel watch, Stands stands, StopPress stop, Clock clock, WorkInHand work) {
        this.watch = watch;
        this.stands = stands;
        this.stop = stop;
        this.clock = clock;
        this.work = work;
        work.orderProperty().addListener((observed, old, now) -> show());
        watch.standProperty().addListener((observed, old, now) -> {
            work.fitProperty().set(false);
            show();
        });
        show();
    }

    private void show() {
        checks.clear();
        connect.setAll(work.orderProperty().get().map(this::toConnect).orElse(List.of()));
        String key = work.orderProperty().get().isPresent() ? "ui.ready.to_check" : "ui.ready.no_unit";
        say(Mark.UNKNOWN, Word.of(key), Word.NONE);
    }

    private List<Row> toConnect(WorkOrder order) {
        StandDescription stand = watch.standProperty().get();
        List<Row> rows = new ArrayList<>();
        rows.add(row("product", Mark.WATCH, order.product().caution()));
        rinsed(order.job().handling()).ifPresent(rows::add);
        rows.add(row("moving", Mark.WATCH, Word.of("ui.ready.moving.do")));
        if (order.plan().needsReliefCheck()) {
            rows.add(row("relief", Mark.WATCH, Word.of("ui.ready.relief.do")));
        }
        int drive = order.plan().wiring().drive();
        String kind = order.model().kind().word().replace('-', '_');
        rows.add(row("unit", Mark.UNKNOWN, Word.of("ui.ready.unit." + kind)));
        rows.add(row("driver", Mark.UNKNOWN, Word.of("ui.ready.driver.do", drive, stand.driver())));
        if (order.model().kind() != UnitKind.HARNESS && order.model().kind() != UnitKind.DRIVER) {
            rows.add(water(order, stand));
        }
        rows.add(row(
                "supply",
                Mark.UNKNOWN,
                Word.of("ui.ready.supply.do", String.format(Locale.ROOT, "%.1f V", stand.supplyVolts()))));
        return rows;
    }

    /** Whether it is clean; empty where nobody was asked, as in practice. */
    private static Optional<Row> rinsed(Handling handling) {
        if (handling.uncleaned().isPresent()) {
            Decision person = handling.uncleaned().get();
            return Optional.of(row("rinsed", Mark.BAD, Word.of("ui.ready.rinsed.not", person.by(), person.reason())));
        }
        return handling.cleanBy().map(person -> row("rinsed", Mark.GOOD, Word.of("ui.ready.rinsed.by", person)));
    }

    private static Row water(WorkOrder order, StandDescription stand) {
        int meter = order.plan().wiring().meter();
        Nozzle nozzle = stand.nozzleBehind(meter);
        double atOnePsi = nozzle.m3PerSecondPerRootPascal() * Math.sqrt(Pressure.PASCALS_PER_PSI);
        Word.Measured size = units -> new FlowRate(atOnePsi).print(units);
        return row("water", Mark.UNKNOWN, Word.of("ui.ready.water.do", meter, nozzle.id(), size));
    }

    private static Row row(String what, Mark mark, Word finding) {
        return new Row(Word.of("ui.ready." + what), mark, finding, Word.NONE);
    }

    /** Has the stand check itself: it arms, and drives nothing. */
    public void check() {
        if (work.orderProperty().get().isEmpty() || busy.get()) {
            return;
        }
        busy.set(true);
        told = false;
        checks.clear();
        work.fitProperty().set(false);
        say(Mark.UNKNOWN, Word.of("ui.ready.checking"), Word.NONE);
        StandDescription description = watch.standProperty().get();
        Stands.Reach reach = watch.reach();
        LocalDate today = LocalDate.now(clock);
        UnitKind kind =
                work.orderProperty().get().map(order -> order.plan().kind()).orElse(UnitKind.PUMP_12V);
        // From this key on: the stand is not even reached yet, but a STOP must not be lost meanwhile.
        StopButton button = new StopButton();
        StopPress.Registration stopping = stop.register(button);
        Job job = watch.aside(() -> checkUp(description, reach, kind, today, button), this::checked);
        job.afterwards(() -> over(stopping));
    }

    private StandCheckUp.Finding checkUp(
            StandDescription description, Stands.Reach reach, UnitKind kind, LocalDate today, StopButton button)
            throws Exception {
        try (Stand stand = stands.reach(description, reach, kind).stand()) {
            return StandCheckUp.of(stand, today, button, sample -> {});
        }
    }

    private void checked(StandCheckUp.Finding finding) {
        told = true;
        List<Row> rows = CareRows.checks(finding);
        checks.setAll(rows);
        Optional<Row> bad = rows.stream().filter(row -> row.mark() == Mark.BAD).findFirst();
        boolean fit = finding.fit() && bad.isEmpty();
        work.fitProperty().set(fit);
        if (fit) {
            say(Mark.GOOD, Word.of("ui.ready.fit"), Word.NONE);
        } else {
            Word what = bad.map(Row::name).orElse(Word.of("ui.stand.check.ended"));
            say(
                    Mark.BAD,
                    Word.of("ui.ready.not_fit", what),
                    bad.map(Row::remedy).orElse(Word.of("ui.stand.check.again")));
        }
    }

    private void over(StopPress.Registration stopping) {
        stopping.close();
        busy.set(false);
        if (!told) {
            say(Mark.BAD, Word.of("ui.ready.not_checked"), Word.of("ui.stand.check.again"));
        }
    }

    private void say(Mark how, Word what, Word doing) {
        mark.set(how);
        headline.set(what);
        remedy.set(doing);
    }

    /** What to mind, then what to connect. */
    public ObservableList<Row> connect() {
        return connectShown;
    }

    /** What was found at the stand. */
    public ObservableList<Row> checks() {
        return checksShown;
    }

    /** How the stand stands, in large words. */
    public ReadOnlyObjectProperty<Word> headlineProperty() {
        return headline.getReadOnlyProperty();
    }

    /** What to do about it; {@link Word#NONE} when nothing. */
    public ReadOnlyObjectProperty<Word> remedyProperty() {
        return remedy.getReadOnlyProperty();
    }

    /** How that stands. */
    public ReadOnlyObjectProperty<Mark> markProperty() {
        return mark.getReadOnlyProperty();
    }

    /** While the stand is being looked at. */
    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }
}
