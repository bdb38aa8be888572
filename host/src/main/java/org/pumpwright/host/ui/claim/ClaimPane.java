package org.pumpwright.host.ui.claim;

import java.nio.file.Path;
import java.util.List;
import javafx.beans.binding.BooleanBinding;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.FactList;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.ClaimView;
import org.pumpwright.host.ui.work.Word;

/** One claim: what stands at the left, what was written down at the right, its pictures below. JavaFX thread only. */
final class ClaimPane implements Pane {
    private final Saying saying;
    private final ClaimModel model;
    private final Routes routes;
    private final MovePrompt moving;
    private final PapersPrompt papers;
    private final MorePrompt more;
    private final VBox node = new VBox();

    /** Where this pane leads. */
    interface Routes {
        /** Completes or corrects the intake. */
        void intake();

        /** Notes something; that the unit was rinsed, to begin with, where that is what comes next. */
        void note(boolean rinsed);

        /** Looks for pictures to add, or adds those that were dropped. */
        void photos(List<Path> dropped);

        void find();

        void decide();

        void seeRun(ClaimRun run);
    }

    ClaimPane(Frame frame, ClaimModel model, Routes routes) {
        this.saying = frame.saying();
        this.model = model;
        this.routes = routes;
        moving = new MovePrompt(frame, model);
        papers = new PapersPrompt(frame, model);
        more = new MorePrompt(frame, model, routes, papers);
        node.getStyleClass().add("claim-one");
        node.setMinHeight(0);
        RowList standing = new RowList(saying, model.standing());
        standing.setId("claim-standing");
        HBox.setHgrow(standing, Priority.ALWAYS);
        HBox body = new HBox(standing, new FactList(saying, model.factsProperty()));
        body.getStyleClass().add("claim-body");
        body.setMinHeight(0);
        VBox.setVgrow(body, Priority.ALWAYS);
        PhotoStrip photos = new PhotoStrip(saying, routes::photos);
        model.shownProperty().addListener((observed, old, now) -> now.ifPresent(photos::show));
        node.getChildren().addAll(head(), body, photos);
    }

    private Node head() {
        Label headline = label("headline");
        headline.textProperty()
                .bind(saying.text(model.shownProperty()
                        .map(view -> view.map(ClaimView::headline).orElse(Word.NONE))));
        Label next = label("claim-next");
        next.setId("claim-next");
        next.textProperty()
                .bind(saying.text(model.shownProperty()
                        .map(view -> view.map(ClaimView::nextSentence).orElse(Word.NONE))));
        VBox head = new VBox(headline, next);
        head.setMinHeight(VBox.USE_PREF_SIZE);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("claim-head");
        return head;
    }

    private static Label label(String style) {
        Label label = new Label();
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Label.USE_PREF_SIZE);
        return label;
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public List<Action> actions() {
        BooleanBinding free = model.busyProperty().not();
        ClaimView view = model.shownProperty().get().orElseThrow();
        Action move = MovePrompt.allowed(view.file()).isEmpty()
                ? Action.nothing()
                : Action.of(saying.text("ui.claim.move"), moving::ask).when(free);
        return List.of(
                next(view, free),
                Action.of(saying.text("ui.claim.photo"), () -> routes.photos(List.of()))
                        .when(free),
                move,
                Action.of(saying.text("ui.claim.note"), () -> routes.note(false))
                        .when(free),
                Action.of(saying.text("ui.claim.more"), more::ask).when(free),
                Action.of(saying.text("ui.claim.back"), model::back));
    }

    private Action next(ClaimView view, BooleanBinding free) {
        return switch (view.next()) {
            case COMPLETE_INTAKE -> next("ui.claim.complete", routes::intake, free);
            case RINSE -> next("ui.claim.rinsed", () -> routes.note(true), free);
            case FIND -> next("ui.claim.find", routes::find, free);
            case DECIDE -> next("ui.claim.decide", routes::decide, free);
            case HAND_OVER, NOTHING -> next("ui.claim.papers", papers::ask, free);
            case TEST -> Action.nothing();
        };
    }

    private Action next(String key, Runnable deed, BooleanBinding free) {
        return Action.of(saying.text(key), deed).when(free).asNext();
    }
}
