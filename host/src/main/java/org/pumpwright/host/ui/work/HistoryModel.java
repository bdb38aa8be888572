package org.pumpwright.host.ui.work;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.record.LookingUp;
import org.pumpwright.host.app.record.OnRecord;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.app.record.RunPages;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.report.retest.Retest;
import org.pumpwright.host.report.retest.RunSpread;
import org.pumpwright.host.text.Texts;

/** What is on record: searched, one run looked at, two runs of one unit held against each other. JavaFX thread only. */
public final class HistoryModel {
    private static final int MOST = 200;
    private static final int MOST_OTHERS = 50;

    private final Background background;
    private final RecordBook book;
    private final LookingUp looking;
    private final Shelf shelf;
    private final RunPages pages;
    private final Opener opener;
    private final Clock clock;
    private final StringProperty text = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Asked> asked = new ReadOnlyObjectWrapper<>(Asked.ANY);
    private final ReadOnlyObjectWrapper<Since> since = new ReadOnlyObjectWrapper<>(Since.EVER);
    private final ObservableList<Entry> found = FXCollections.observableArrayList();
    private final ObservableList<Row> rows = FXCollections.observableArrayList();
    private final ObservableList<Row> rowsShown = FXCollections.unmodifiableObservableList(rows);
    private final ReadOnlyObjectWrapper<Word> headline = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Optional<StoredRun>> shown = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<StoredRun>> earlier = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObservableList<Row> details = FXCollections.observableArrayList();
    private final ObservableList<Row> detailsShown = FXCollections.unmodifiableObservableList(details);
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private RunSpread spread = RunSpread.NOT_KNOWN;
    private int searches;

    /** Which verdicts are looked for. */
    public enum Asked {
        ANY,
        PASS,
        FAIL,
        INCONCLUSIVE,
        INVALID;

        Optional<String> word() {
            return this == ANY ? Optional.empty() : Optional.of(style());
        }

        /** As keys of texts name it. */
        public String style() {
            return name().toLowerCase(Locale.ROOT);
        }

        Asked following() {
            return switch (this) {
                case ANY -> FAIL;
                case FAIL -> PASS;
                case PASS -> INCONCLUSIVE;
                case INCONCLUSIVE -> INVALID;
                case INVALID -> ANY;
            };
        }
    }

    /** From which day on is looked. */
    public enum Since {
        EVER(0),
        TODAY(1),
        WEEK(7),
        SEASON(120);

        private final int days;

        Since(int days) {
            this.days = days;
        }

        Optional<LocalDate> first(LocalDate today) {
            return this == EVER ? Optional.empty() : Optional.of(today.minusDays(days - 1L));
        }

        /** As keys of texts name it. */
        public String style() {
            return name().toLowerCase(Locale.ROOT);
        }

        Since following() {
            return switch (this) {
                case EVER -> TODAY;
                case TODAY -> WEEK;
                case WEEK -> SEASON;
                case SEASON -> EVER;
            };
        }
    }

    /**
     * Looks at what is on record.
     *
     * @param shelf the shop's healthy curves
     * @param pages makes papers
     * @param opener shows them
     */
    public HistoryModel(
            Background background, RecordBook book, Shelf shelf, RunPages pages, Opener opener, Clock clock) {
        this.background = background;
        this.book = book;
        this.looking = new LookingUp(book);
        this.shelf = shelf;
        this.pages = pages;
        this.opener = opener;
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
        rows.setAll(rows(entries));
        headline.set(
                entries.isEmpty()
                        ? Word.of("ui.history.none")
                        : Word.of(entries.size() == MOST ? "ui.history.many" : "ui.history.found", entries.size()));
    }

    /** These entries as lines of a list. */
    public static List<Row> rows(List<Entry> entries) {
        return entries.stream().map(HistoryRows::found).toList();
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
        asked.set(Asked.ANY);
        since.set(Since.EVER);
        search();
    }

    /** Looks at the run in this line of the list. */
    public void open(int line) {
        if (line >= 0 && line < found.size()) {
            open(found.get(line).id());
        }
    }

    /** Looks at the run with this id. */
    public void open(String id) {
        busy.set(true);
        background.run(
                () -> Patience.ask(() -> read(id), book.choice().words()),
                run -> {
                    busy.set(false);
                    earlier.set(Optional.empty());
                    shown.set(Optional.of(run));
                    details.setAll(HistoryRows.of(run));
                },
                this::failed);
    }

    private StoredRun read(String id) throws Exception {
        OnRecord whole = OnRecord.of(book, id);
        Entry entry = whole.entry();
        Optional<RunRecord> run = Optional.empty();
        boolean isRun = entry.kind() == EntryKind.RUN || entry.kind() == EntryKind.GRADE;
        if (isRun && !whole.attachments().isEmpty()) {
            run = whole.attachments().get(0).map(blob -> RunContent.read(entry.content(), blob));
        }
        return new StoredRun(entry, run, whole.seal(), looking.sameUnit(entry, MOST_OTHERS));
    }

    /** Holds the run that is shown against another one of the same unit; the earlier of the two is drawn hollow. */
    public void compare(Entry other) {
        StoredRun here = shown.get().orElseThrow();
        busy.set(true);
        background.run(
                () -> Patience.ask(
                        () -> compared(here, read(other.id())), book.choice().words()),
                both -> {
                    busy.set(false);
                    spread = both.spread();
                    shown.set(Optional.of(both.later()));
                    earlier.set(Optional.of(both.earlier()));
                    details.setAll(both.changes());
                },
                this::failed);
    }

    private record Both(StoredRun earlier, StoredRun later, RunSpread spread, List<Row> changes) {}

    private Both compared(StoredRun one, StoredRun other) throws Exception {
        RunRecord first = one.run().orElseThrow(() -> gone(one));
        RunRecord second = other.run().orElseThrow(() -> gone(other));
        Retest retest = Retest.of(first, second);
        RunSpread known = retest.sameCurve() ? spreadOf(retest.after()) : RunSpread.NOT_KNOWN;
        boolean inOrder = retest.before().id().equals(first.id());
        return new Both(inOrder ? one : other, inOrder ? other : one, known, HistoryRows.changes(retest, known));
    }

    private static OrderException gone(StoredRun run) {
        return new OrderException(
                "the samples of %s are not on record".formatted(run.entry().id()));
    }

    private RunSpread spreadOf(RunRecord run) throws Exception {
        String label = run.curve().map(RunRecord.CurveUsed::label).orElse("");
        return shelf.curves().stream()
                .filter(curve -> curve.label().equals(label))
                .findFirst()
                .map(RunSpread::of)
                .orElse(RunSpread.NOT_KNOWN);
    }

    private void failed(Throwable failure) {
        busy.set(false);
        background.trouble(
                failure instanceof IllegalArgumentException
                        ? Trouble.named("order", String.valueOf(failure.getMessage()))
                        : Trouble.of(failure));
    }

    /** Back to one run, or from one run to the list. */
    public void back() {
        if (earlier.get().isPresent()) {
            earlier.set(Optional.empty());
            shown.get().ifPresent(run -> details.setAll(HistoryRows.of(run)));
        } else {
            shown.set(Optional.empty());
        }
    }

    /** Opens the paper of what is shown: the technician's page of a run, before and after of two. */
    public void openPaper(UnitSystem units, Texts texts) {
        Optional<RunRecord> run = shown.get().flatMap(StoredRun::run);
        Optional<RunRecord> before = earlier.get().flatMap(StoredRun::run);
        RunSpread known = spread;
        run.ifPresent(later -> background.run(paper(later, before, known, units, texts), opened -> {}, this::noPaper));
    }

    private Callable<Path> paper(
            RunRecord later, Optional<RunRecord> before, RunSpread known, UnitSystem units, Texts texts) {
        return () -> {
            Path file = before.isPresent()
                    ? pages.retest(before.get(), later, known, units, texts)
                    : pages.technician(later, units, texts);
            opener.open(file);
            return file;
        };
    }

    private void noPaper(Throwable failure) {
        background.trouble(
                failure instanceof StoreException
                        ? Trouble.of(failure)
                        : Trouble.named("paper", String.valueOf(failure.getMessage())));
    }

    /** What is looked for: beginning of a serial number, claim number or customer, or letters from anywhere. */
    public StringProperty textProperty() {
        return text;
    }

    /** Which verdict. */
    public ReadOnlyObjectProperty<Asked> askedProperty() {
        return asked.getReadOnlyProperty();
    }

    /** From which day on. */
    public ReadOnlyObjectProperty<Since> sinceProperty() {
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

    /** The run that is looked at; empty while the list is. */
    public ReadOnlyObjectProperty<Optional<StoredRun>> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** The run before it that it is held against; empty when it is not. */
    public ReadOnlyObjectProperty<Optional<StoredRun>> earlierProperty() {
        return earlier.getReadOnlyProperty();
    }

    /** What the run says, or what changed between the two. */
    public ObservableList<Row> details() {
        return detailsShown;
    }

    /** True while something is looked up. */
    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }
}
