package org.pumpwright.host.ui.work;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.record.LookingUp;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.record.ledger.Entry;

/** What is on record, looked up by one text, a verdict and a span of days. JavaFX thread only. */
public final class HistorySearch {
    private static final int MOST = 200;

    private final Background background;
    private final RecordBook book;
    private final LookingUp looking;
    private final Clock clock;
    private final StringProperty text = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<AskedVerdict> asked = new ReadOnlyObjectWrapper<>(AskedVerdict.ANY);
    private final ReadOnlyObjectWrapper<AskedDays> since = new ReadOnlyObjectWrapper<>(AskedDays.EVER);
    private final ObservableList<Entry> found = FXCollections.observableArrayList();
    private final ObservableList<Row> rows = FXCollections.observableArrayList();
    private final ObservableList<Row> rowsShown = FXCollections.unmodifiableObservableList(rows);
    private final ReadOnlyObjectWrapper<Word> headline = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private int searches;

    HistorySearch(Background background, RecordBook book, Clock clock) {
        this.background = background;
        this.book = book;
        this.looking = new LookingUp(book);
        this.clock = clock;
    }

    /** Looks for what is asked. A search that was overtaken by another one is forgotten. */
    public void search() {
        int own = ++searches;
        LookingUp.Wanted wanted =
                new LookingUp.Wanted(text.get(), asked.get().word(), since.get().first(LocalDate.now(clock)), MOST);
        busy.set(true);
        headline.set(Word.of("ui.history.looking"));
        background.run(
                () -> Patience.ask(() -> looking.find(wanted), book.choice().words()),
                entries -> {
                    if (own == searches) {
                        busy.set(false);
                        show(entries);
                    }
                },
                failure -> {
                    if (own == searches) {
                        busy.set(false);
                        headline.set(Word.of("ui.history.away"));
                    }
                    background.trouble(Trouble.of(failure));
                });
    }

    private void show(List<Entry> entries) {
        found.setAll(entries);
        rows.setAll(HistoryRows.found(entries));
        headline.set(
                switch (entries.size()) {
                    case 0 -> Word.of("ui.history.none");
                    case 1 -> Word.of("ui.history.found.one");
                    case MOST -> Word.of("ui.history.many", entries.size());
                    default -> Word.of("ui.history.found", entries.size());
                });
    }

    /** Asks for the next verdict. */
    public void otherVerdict() {
        asked.set(asked.get().following());
        search();
    }

    /** Asks for the next span of days. */
    public void otherDays() {
        since.set(since.get().following());
        search();
    }

    /** Asks for everything again. */
    public void clear() {
        text.set("");
        asked.set(AskedVerdict.ANY);
        since.set(AskedDays.EVER);
        search();
    }

    /** The id of what is in this line of the list; empty where there is no such line. */
    Optional<String> id(int line) {
        return line >= 0 && line < found.size() ? Optional.of(found.get(line).id()) : Optional.empty();
    }

    /** What is looked for: beginning of a serial number, claim number or customer, or letters from anywhere. */
    public StringProperty textProperty() {
        return text;
    }

    /** Which verdict. */
    public ReadOnlyObjectProperty<AskedVerdict> askedProperty() {
        return asked.getReadOnlyProperty();
    }

    /** From which day on. */
    public ReadOnlyObjectProperty<AskedDays> sinceProperty() {
        return since.getReadOnlyProperty();
    }

    /** What was found, the newest first. */
    public ObservableList<Row> rows() {
        return rowsShown;
    }

    /** How much was found. */
    public ReadOnlyObjectProperty<Word> headlineProperty() {
        return headline.getReadOnlyProperty();
    }

    /** True while something is looked up. */
    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }
}
