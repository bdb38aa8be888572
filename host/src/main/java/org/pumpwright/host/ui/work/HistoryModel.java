package org.pumpwright.host.ui.work;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.paper.Found;
import org.pumpwright.host.app.paper.PaperDesk;
import org.pumpwright.host.app.paper.PaperKind;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.record.ledger.Entry;

/** One run on record that is looked at, or two runs of one unit held against each other, and their papers. JavaFX thread only. */
public final class HistoryModel {
    private final Background background;
    private final StoredRuns runs;
    private final HistorySearch search;
    private final PaperDesk desk;
    private final PaperWork papers;
    private final ReadOnlyObjectWrapper<Optional<StoredRun>> shown = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<StoredRun>> earlier = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObservableList<Row> details = FXCollections.observableArrayList();
    private final ObservableList<Row> detailsShown = FXCollections.unmodifiableObservableList(details);
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Word> paper = new ReadOnlyObjectWrapper<>(Word.NONE);

    /**
     * Looks at what is on record.
     *
     * @param shelf the shop's healthy curves
     * @param desk makes papers
     * @param opener shows them
     */
    public HistoryModel(
            Background background, RecordBook book, Shelf shelf, PaperDesk desk, Opener opener, Clock clock) {
        this.background = background;
        this.runs = new StoredRuns(book, shelf);
        this.search = new HistorySearch(background, book, clock);
        this.desk = desk;
        this.papers = new PaperWork(background, desk, opener);
    }

    /** Looks things up. */
    public HistorySearch search() {
        return search;
    }

    /** Looks at what is in this line of the list that was found. */
    public void open(int line) {
        search.id(line).ifPresent(this::open);
    }

    /** Looks at the run or the bucket test with this id. */
    public void open(String id) {
        busy.set(true);
        background.run(
                () -> Patience.ask(() -> runs.read(id), runs.store()),
                run -> {
                    busy.set(false);
                    paper.set(Word.NONE);
                    earlier.set(Optional.empty());
                    shown.set(Optional.of(run));
                    details.setAll(HistoryRows.of(run));
                },
                this::failed);
    }

    /** Holds the run that is shown against another one of the same unit; the earlier of the two is drawn hollow. */
    public void compare(Entry other) {
        StoredRun here = shown.get().orElseThrow();
        busy.set(true);
        background.run(
                () -> Patience.ask(() -> runs.compared(here, other.id()), runs.store()),
                both -> {
                    busy.set(false);
                    paper.set(Word.NONE);
                    shown.set(Optional.of(both.later()));
                    earlier.set(Optional.of(both.earlier()));
                    details.setAll(both.changes());
                },
                this::failed);
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
        paper.set(Word.NONE);
        if (earlier.get().isPresent()) {
            earlier.set(Optional.empty());
            shown.get().ifPresent(run -> details.setAll(HistoryRows.of(run)));
        } else {
            shown.set(Optional.empty());
        }
    }

    /** The paper that belongs to what is shown: of a run the technician's page, of two before and after, of a bucket test its report. */
    public PaperKind mainPaper() {
        if (earlier.get().isPresent()) {
            return PaperKind.RETEST;
        }
        return shown.get().flatMap(StoredRun::test).isPresent() ? PaperKind.BUCKET : PaperKind.TECHNICIAN;
    }

    /** Makes a paper of what is shown and opens it. */
    public void openPaper(PaperKind kind, PaperDesk.Manner manner) {
        Optional<String> before = earlier.get().map(run -> run.entry().id()).filter(id -> kind == PaperKind.RETEST);
        shown.get()
                .map(run -> run.entry().id())
                .ifPresent(id -> papers.open(
                        kind,
                        () -> {
                            Optional<Found> other =
                                    before.isPresent() ? Optional.of(desk.find(before.get())) : Optional.empty();
                            return new PaperWork.Source(desk.find(id), other);
                        },
                        manner,
                        file -> paper.set(PaperWork.opened(file))));
    }

    /** These entries as lines of a list. */
    public static List<Row> rows(List<Entry> entries) {
        return HistoryRows.found(entries);
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

    /** Where the paper is that was opened; {@link Word#NONE} before. */
    public ReadOnlyObjectProperty<Word> paperProperty() {
        return paper.getReadOnlyProperty();
    }

    /** True while a run is looked up. */
    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** True while a paper is made. */
    public ReadOnlyBooleanProperty makingPaperProperty() {
        return papers.busyProperty();
    }
}
