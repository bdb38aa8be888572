package org.pumpwright.host.ui.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.record.RunRecord;

/** What came of a run: the verdict, what stands behind it, what to do next, and its papers. JavaFX thread only. */
public final class VerdictModel {
    private final Background background;
    private final Shelf shelf;
    private final WorkInHand work;
    private final Opener opener;
    private final ReadOnlyObjectWrapper<Optional<Verdict>> verdict = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Word> meaning = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Word> subject = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Optional<Plan>> nextPlan = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Word> paper = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ObservableList<Row> why = FXCollections.observableArrayList();
    private final ObservableList<Row> whyShown = FXCollections.unmodifiableObservableList(why);
    private final ObservableList<Row> next = FXCollections.observableArrayList();
    private final ObservableList<Row> nextShown = FXCollections.unmodifiableObservableList(next);

    /**
     * Shows what came of the work in hand.
     *
     * @param opener shows papers
     */
    public VerdictModel(Background background, Shelf shelf, WorkInHand work, Opener opener) {
        this.background = background;
        this.shelf = shelf;
        this.work = work;
        this.opener = opener;
        work.resultProperty().addListener((observed, old, now) -> show(now));
    }

    private void show(Optional<Acceptance.Result> result) {
        nextPlan.set(Optional.empty());
        paper.set(Word.NONE);
        verdict.set(result.map(each -> each.record().grade().verdict()));
        meaning.set(result.map(VerdictModel::meaning).orElse(Word.NONE));
        subject.set(result.map(each -> subject(each.record())).orElse(Word.NONE));
        why.setAll(result.map(each -> VerdictRows.why(each.record())).orElse(List.of()));
        next.setAll(result.map(each -> VerdictRows.next(each.record())).orElse(List.of()));
        result.ifPresent(each -> findNextPlan(each.record().grade().nextTest()));
    }

    private static Word meaning(Acceptance.Result result) {
        Verdict verdict = result.record().grade().verdict();
        boolean advisory = result.record().grade().advisory();
        Word plain = Word.of("ui.verdict.means." + verdict.name().toLowerCase(Locale.ROOT));
        return advisory ? Word.of("ui.verdict.advisory", plain) : plain;
    }

    private static Word subject(RunRecord run) {
        String key = run.subject().practice() ? "ui.verdict.subject.practice" : "ui.verdict.subject";
        return Word.of(
                key,
                run.subject().modelTitle(),
                WorkOrder.serialWord(run.subject().serial()),
                run.plan());
    }

    private void findNextPlan(String test) {
        Optional<Plan> done = work.orderProperty().get().map(WorkOrder::plan);
        if (!test.isBlank() && done.isPresent()) {
            Plan plan = done.get();
            Optional<Acceptance.Result> asked = work.resultProperty().get();
            background.run(() -> NextPlan.of(test, plan, shelf.plans()), found -> {
                if (work.resultProperty().get().equals(asked)) {
                    nextPlan.set(found);
                }
            });
        }
    }

    /** Whether the run was only practice. */
    public boolean practice() {
        return work.orderProperty().get().flatMap(WorkOrder::practice).isPresent();
    }

    /** Takes the unit in hand once more, with the plan of the next test. */
    public void beginNextTest() {
        Optional<Plan> plan = work.busyProperty().get() ? Optional.empty() : nextPlan.get();
        work.orderProperty().get().ifPresent(order -> plan.map(order::by).ifPresent(work::take));
    }

    /** Opens the page to print. */
    public void openPage() {
        work.resultProperty()
                .get()
                .map(Acceptance.Result::kept)
                .map(RecordFolder.Kept::page)
                .ifPresent(this::open);
    }

    private void open(Path page) {
        Callable<Path> opening = () -> {
            opener.open(page);
            return page;
        };
        background.run(
                opening,
                opened -> paper.set(Word.of("ui.verdict.opened", opened)),
                failure -> background.trouble(Trouble.named("paper", page.toString())));
    }

    /** The verdict; empty before a run. */
    public ReadOnlyObjectProperty<Optional<Verdict>> verdictProperty() {
        return verdict.getReadOnlyProperty();
    }

    /** What the verdict means. */
    public ReadOnlyObjectProperty<Word> meaningProperty() {
        return meaning.getReadOnlyProperty();
    }

    /** Which unit, and by which plan. */
    public ReadOnlyObjectProperty<Word> subjectProperty() {
        return subject.getReadOnlyProperty();
    }

    /** The plan that carries out the next test; empty when none does. */
    public ReadOnlyObjectProperty<Optional<Plan>> nextPlanProperty() {
        return nextPlan.getReadOnlyProperty();
    }

    /** Where the page is that was opened; {@link Word#NONE} before. */
    public ReadOnlyObjectProperty<Word> paperProperty() {
        return paper.getReadOnlyProperty();
    }

    /** The reasons, and what was judged. */
    public ObservableList<Row> why() {
        return whyShown;
    }

    /** The next test, the complaint, likely causes, the stand. */
    public ObservableList<Row> next() {
        return nextShown;
    }
}
