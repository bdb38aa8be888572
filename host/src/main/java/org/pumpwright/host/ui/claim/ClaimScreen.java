package org.pumpwright.host.ui.claim;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.layout.StackPane;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.IntakeField;
import org.pumpwright.host.ui.work.IntakeForm;
import org.pumpwright.host.ui.work.Word;

/** The warranty desk: the list of claims, one claim, and the forms that are filled in at it. JavaFX thread only. */
public final class ClaimScreen implements Screen {
    private final Frame frame;
    private final Saying saying;
    private final ClaimModel model;
    private final Consumer<String> seeRun;
    private final StackPane node = new StackPane();
    private final ObservableList<Action> actions = FXCollections.observableArrayList();
    private final ListPane list;
    private final ClaimPane claim;
    private final IntakePane intake;
    private final NotePane note;
    private final PhotoPane photos;
    private final FindingPane finding;
    private final DecisionPane decision;
    private final ReadOnlyObjectWrapper<Word> inHand = new ReadOnlyObjectWrapper<>(Word.NONE);
    private Pane current;

    /**
     * The desk of this model.
     *
     * @param seeRun shows the run with this id of its entry, in the history
     */
    public ClaimScreen(Frame frame, ClaimModel model, Consumer<String> seeRun) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        this.seeRun = seeRun;
        node.getStyleClass().add("claim-screen");
        node.setMinHeight(0);
        list = new ListPane(saying, model, this::newClaim);
        claim = new ClaimPane(frame, model, new Ways());
        intake = new IntakePane(frame, model, this::showIntake, this::showWhatIsOpen);
        note = new NotePane(saying, model, this::showWhatIsOpen);
        photos = new PhotoPane(saying, model, this::showWhatIsOpen);
        finding = new FindingPane(saying, model, this::showWhatIsOpen);
        decision = new DecisionPane(saying, model, this::showWhatIsOpen);
        current = list;
        model.shownProperty().addListener((observed, old, now) -> {
            // Pictures are added one after the other, and the claim is read anew after each.
            if (current != photos) {
                showWhatIsOpen();
            }
        });
        showWhatIsOpen();
    }

    /** What leads on from a claim. */
    private final class Ways implements ClaimPane.Routes {
        @Override
        public void intake() {
            String why = saying.now(Word.of("ui.claim.intake.usual_reason"));
            model.shownProperty()
                    .get()
                    .ifPresent(view -> model.form().fill(view.file().intake(), why));
            intake.begin();
        }

        @Override
        public void note(boolean rinsed) {
            note.begin(rinsed);
            show(note);
        }

        @Override
        public void photos(List<Path> dropped) {
            photos.begin(dropped);
            show(photos);
        }

        @Override
        public void find() {
            finding.begin();
            show(finding);
        }

        @Override
        public void decide() {
            decision.begin();
            show(decision);
        }

        @Override
        public void seeRun(ClaimRun run) {
            frame.goTo(Moment.HISTORY);
            seeRun.accept(run.entry());
        }
    }

    /** What was looked for in vain is the serial of a unit that is new here. */
    private void newClaim() {
        IntakeForm form = model.form();
        form.empty();
        form.field(IntakeField.TAKEN_BY).set(model.personProperty().get());
        if (model.list().rows().isEmpty()) {
            form.field(IntakeField.SERIAL).set(model.list().soughtProperty().get());
        }
        intake.begin();
    }

    private void showIntake() {
        show(intake);
    }

    private void showWhatIsOpen() {
        show(model.shownProperty().get().isPresent() ? claim : list);
    }

    private void show(Pane pane) {
        current = pane;
        inHand.set(step(pane)
                .flatMap(step -> model.shownProperty()
                        .get()
                        .map(view -> Word.of("ui.claim.at", view.file().number(), Word.of(step))))
                .orElse(Word.NONE));
        node.getChildren().setAll(pane.node());
        // Never left on a field that is gone: STOP's key comes in by the node that has it.
        node.requestFocus();
        actions.setAll(pane.actions());
        pane.focus();
    }

    /** The step of a claim that fills the screen, where nothing else there names the claim. */
    private Optional<String> step(Pane pane) {
        if (pane == finding) {
            return Optional.of("ui.claim.find");
        }
        if (pane == decision) {
            return Optional.of("ui.claim.decide");
        }
        if (pane == photos) {
            return Optional.of("ui.claim.photo");
        }
        return pane == note ? Optional.of("ui.claim.note") : Optional.empty();
    }

    @Override
    public Optional<ObservableValue<Word>> inHand() {
        return Optional.of(inHand.getReadOnlyProperty());
    }

    @Override
    public Moment moment() {
        return Moment.CLAIM;
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public ObservableList<Action> actions() {
        return actions;
    }

    @Override
    public void shown() {
        if (model.shownProperty().get().isEmpty()) {
            model.list().refresh();
        }
    }

    /** A scanner is a keyboard: what it reads goes where the keyboard is. At the list or a claim it looks for a claim. */
    @Override
    public void scanned(String text) {
        Node focused = node.getScene() == null ? node : node.getScene().getFocusOwner();
        if (current != list && focused instanceof TextField field && field.isEditable()) {
            field.replaceSelection(text);
        } else if (current == list || current == claim) {
            model.scanned(text);
        } else {
            current.scanned(text);
        }
    }
}
