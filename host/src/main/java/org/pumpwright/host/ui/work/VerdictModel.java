package org.pumpwright.host.ui.work;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.paper.PaperDesk;
import org.pumpwright.host.app.paper.PaperKind;
import org.pumpwright.host.app.record.AfterTheRun;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.cause.NextStep;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.record.RunRecord;

/** What came of a run: the verdict, what stands behind it, what to do next, and its papers. JavaFX thread only. */
public final class VerdictModel {
    private final Background background;
    private final Shelf shelf;
    private final WorkInHand work;
    private final RunFiling filing;
    private final PaperWork papers;
    private final ReadOnlyObjectWrapper<Optional<Verdict>> verdict = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Word> meaning = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Word> subject = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Word> pretence = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Optional<Row>> complaint = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<NextPlan> nextPlan = new ReadOnlyObjectWrapper<>(NextPlan.NONE);
    private final ReadOnlyObjectWrapper<Word> paper = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ObservableList<Row> why = FXCollections.observableArrayList();
    private final ObservableList<Row> whyShown = FXCollections.unmodifiableObservableList(why);
    private final ObservableList<Row> next = FXCollections.observableArrayList();
    private final ObservableList<Row> nextShown = FXCollections.unmodifiableObservableList(next);

    /**
     * Shows what came of the work in hand, and puts it on record.
     *
     * @param shelf the shop's plans
     * @param desk makes papers
     * @param opener shows them
     */
    public VerdictModel(
            Background background, Shelf shelf, WorkInHand work, AfterTheRun after, PaperDesk desk, Opener opener) {
        this.background = background;
        this.shelf = shelf;
        this.work = work;
        this.filing = new RunFiling(background, after, desk);
        this.papers = new PaperWork(background, desk, opener);
        work.resultProperty().addListener((observed, old, now) -> show(now.map(Acceptance.Result::record)));
    }

    private void show(Optional<RunRecord> result) {
        nextPlan.set(NextPlan.NONE);
        paper.set(Word.NONE);
        verdict.set(result.map(run -> run.grade().verdict()));
        meaning.set(result.map(VerdictModel::meaning).orElse(Word.NONE));
        subject.set(result.map(VerdictModel::subject).orElse(Word.NONE));
        pretence.set(result.map(Pretence::of).orElse(Word.NONE));
        complaint.set(result.flatMap(VerdictRows::complaint));
        why.setAll(result.map(VerdictRows::why).orElse(List.of()));
        next.setAll(result.map(run -> VerdictRows.next(run, Word.NONE)).orElse(List.of()));
        result.ifPresentOrElse(filing::file, filing::clear);
        result.ifPresent(this::findNextPlan);
    }

    private static Word meaning(RunRecord run) {
        Word plain = Word.of("ui.verdict.means." + VerdictWords.key(run.grade().verdict()));
        return run.grade().advisory() ? Word.of("ui.verdict.advisory", plain) : plain;
    }

    private static Word subject(RunRecord run) {
        return Word.of(
                "ui.verdict.subject",
                run.subject().modelTitle(),
                WorkOrder.serialWord(run.subject().serial()),
                run.plan());
    }

    private void findNextPlan(RunRecord run) {
        Grade grade = run.grade();
        Optional<Plan> done = work.orderProperty().get().map(WorkOrder::plan);
        if (!grade.nextTest().isBlank() && done.isPresent()) {
            Plan plan = done.get();
            Optional<Acceptance.Result> asked = work.resultProperty().get();
            background.run(() -> NextPlan.of(grade, plan, shelf.plans()), found -> {
                if (work.resultProperty().get().equals(asked)) {
                    nextPlan.set(found);
                    next.setAll(VerdictRows.next(run, found.how()));
                }
            });
        }
    }

    /** Whether the run was only practice. */
    public boolean practice() {
        return work.orderProperty().get().flatMap(WorkOrder::practice).isPresent();
    }

    /** Whether the next test is the bucket test of a meter. */
    public boolean bucketNext() {
        return nextPlan.get().step().means() == NextStep.Means.BUCKET;
    }

    /** Takes the unit in hand once more, with the plan of the next test. */
    public void beginNextTest() {
        Optional<Plan> plan =
                work.busyProperty().get() ? Optional.empty() : nextPlan.get().plan();
        work.orderProperty().get().ifPresent(order -> plan.map(order::by).ifPresent(work::take));
    }

    /** Makes a paper of the run and opens it; as soon as the run is on record, or it is known that it is not. */
    public void open(PaperKind kind, PaperDesk.Manner manner) {
        filing.whenFiled(run -> papers.open(
                kind,
                () -> new PaperWork.Source(run, Optional.empty()),
                manner,
                file -> paper.set(PaperWork.opened(file))));
    }

    /** Whether the run was made for a claim. */
    public boolean hasClaim() {
        return work.resultProperty()
                .get()
                .flatMap(result -> result.record().intake().claim())
                .isPresent();
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

    /** That the run was no test of a real part; {@link Word#NONE} when everything was real. */
    public ReadOnlyObjectProperty<Word> pretenceProperty() {
        return pretence.getReadOnlyProperty();
    }

    /** Id of the run, once it is on record. */
    public Optional<String> onRecord() {
        return work.resultProperty()
                .get()
                .filter(result -> filing.stateProperty().get().mark() == Mark.GOOD)
                .map(result -> result.record().id());
    }

    /** What can be begun as the next test. */
    public ReadOnlyObjectProperty<NextPlan> nextPlanProperty() {
        return nextPlan.getReadOnlyProperty();
    }

    /** Whether the complaint is explained, in the line's name, and why; empty where nobody complained. */
    public ReadOnlyObjectProperty<Optional<Row>> complaintProperty() {
        return complaint.getReadOnlyProperty();
    }

    /** Whether the run is on record, in the line's name; what keeps it from being, in its finding. */
    public ReadOnlyObjectProperty<Row> filedProperty() {
        return filing.stateProperty();
    }

    /** True while a paper is made. */
    public ReadOnlyBooleanProperty makingPaperProperty() {
        return papers.busyProperty();
    }

    /** Where the paper is that was opened; {@link Word#NONE} before. */
    public ReadOnlyObjectProperty<Word> paperProperty() {
        return paper.getReadOnlyProperty();
    }

    /** The reasons, and what was judged. */
    public ObservableList<Row> why() {
        return whyShown;
    }

    /** The next test, likely causes, the stand. */
    public ObservableList<Row> next() {
        return nextShown;
    }
}
