package org.pumpwright.host.ui.claim;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.Prompt;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.IntakeForm.Entered;

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
    private final FindingPane finding;
    private final DecisionPane decision;

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
        finding = new FindingPane(saying, model, this::showWhatIsOpen);
        decision = new DecisionPane(saying, model, this::showWhatIsOpen);
        model.shownProperty().addListener((observed, old, now) -> showWhatIsOpen());
        model.packedProperty().addListener((observed, old, now) -> now.ifPresent(zip -> packed(zip.toString())));
        showWhatIsOpen();
    }

    /** What leads on from a claim. */
    private final class Ways implements ClaimPane.Routes {
        @Override
        public void completeIntake() {
            model.shownProperty()
                    .get()
                    .ifPresent(view -> model.form().fill(view.file().intake()));
            intake.begin();
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

    private void newClaim() {
        model.form().empty();
        model.form().field(Entered.TAKEN_BY).set(model.personProperty().get());
        intake.begin();
    }

    private void showIntake() {
        show(intake);
    }

    private void showWhatIsOpen() {
        show(model.shownProperty().get().isPresent() ? claim : list);
    }

    private void show(Pane pane) {
        node.getChildren().setAll(pane.node());
        // Never left on a field that is gone: STOP's key comes in by the node that has it.
        node.requestFocus();
        actions.setAll(pane.actions());
    }

    private void packed(String zip) {
        frame.ask(new Prompt(
                saying.text("ui.claim.packed"),
                saying.text("ui.claim.packed.text", zip),
                Optional.empty(),
                List.of(
                        Action.of(saying.text("ui.claim.packed.good"), () -> {}).asNext(),
                        Action.of(saying.text("ui.claim.packed.folder"), model::showPacket))));
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
            model.list();
        }
    }

    @Override
    public void scanned(String text) {
        model.open(text);
    }
}
