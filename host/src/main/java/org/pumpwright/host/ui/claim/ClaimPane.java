package org.pumpwright.host.ui.claim;

import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.BooleanBinding;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.app.claim.PacketDesk;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.claim.CustodyState;
import org.pumpwright.host.claim.Photo.Shows;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Prompt;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.FactList;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.ClaimView;
import org.pumpwright.host.ui.work.ClaimView.NextStep;
import org.pumpwright.host.ui.work.Word;

/** One claim: what stands at the left, what was written down at the right, its pictures below. JavaFX thread only. */
final class ClaimPane implements Pane {
    private static final int MOST_MOVES = 4;
    private static final int USUAL_RINSES = 2;

    private final Frame frame;
    private final Saying saying;
    private final ClaimModel model;
    private final Routes routes;
    private final VBox node = new VBox();
    private final PhotoStrip photos;

    /** Where this pane leads. */
    interface Routes {
        void completeIntake();

        void find();

        void decide();

        void seeRun(ClaimRun run);
    }

    ClaimPane(Frame frame, ClaimModel model, Routes routes) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        this.routes = routes;
        node.getStyleClass().add("claim-one");
        node.setMinHeight(0);
        Label headline = label("headline");
        headline.textProperty()
                .bind(saying.text(model.shownProperty()
                        .map(view -> view.map(ClaimView::headline).orElse(Word.NONE))));
        Label next = label("claim-next");
        next.setId("claim-next");
        next.textProperty()
                .bind(saying.text(model.shownProperty()
                        .map(view -> view.map(ClaimView::nextSentence).orElse(Word.NONE))));
        HBox head = new HBox(headline, next);
        HBox.setHgrow(next, Priority.ALWAYS);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("claim-head");
        RowList standing = new RowList(saying, model.standing());
        standing.setId("claim-standing");
        HBox.setHgrow(standing, Priority.ALWAYS);
        FactList facts = new FactList(saying, model.factsProperty());
        HBox body = new HBox(standing, facts);
        body.getStyleClass().add("claim-body");
        body.setMinHeight(0);
        VBox.setVgrow(body, Priority.ALWAYS);
        photos = new PhotoStrip(saying, this::askPhoto);
        model.shownProperty().addListener((observed, old, now) -> now.ifPresent(photos::show));
        node.getChildren().addAll(head, body, photos);
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
        return List.of(
                nextAction(view.next(), free),
                Action.of(saying.text("ui.claim.photo"), () -> askPhoto(Path.of("")))
                        .when(free),
                Action.of(saying.text("ui.claim.move"), this::askMove).when(free),
                view.runs().isEmpty()
                        ? Action.nothing()
                        : Action.of(
                                        saying.text("ui.claim.see_run"),
                                        () -> routes.seeRun(view.runs().get(0)))
                                .when(free),
                packet(view, free),
                Action.of(saying.text("ui.claim.back"), model::back));
    }

    private Action nextAction(NextStep step, BooleanBinding free) {
        return switch (step) {
            case COMPLETE_INTAKE ->
                Action.of(saying.text("ui.claim.complete"), routes::completeIntake)
                        .when(free)
                        .asNext();
            case FIND ->
                Action.of(saying.text("ui.claim.find"), routes::find).when(free).asNext();
            case DECIDE ->
                Action.of(saying.text("ui.claim.decide"), routes::decide)
                        .when(free)
                        .asNext();
            case TEST, PACK -> Action.nothing();
        };
    }

    private Action packet(ClaimView view, BooleanBinding free) {
        Action packing = Action.of(saying.text("ui.claim.packet"), this::pack).when(free);
        return view.next() == NextStep.PACK ? packing.asNext() : packing;
    }

    private void pack() {
        frame.ask(new Prompt(
                saying.text("ui.claim.packet.ask"),
                saying.text("ui.claim.packet.text"),
                Optional.empty(),
                List.of(
                        Action.of(saying.text("ui.claim.packet.without"), () -> pack(false))
                                .asNext(),
                        Action.of(saying.text("ui.claim.packet.with"), () -> pack(true)),
                        Action.nothing(),
                        Action.nothing(),
                        Action.nothing(),
                        Action.of(saying.text("ui.cancel"), () -> {}))));
    }

    private void pack(boolean withCustomer) {
        model.pack(new PacketDesk.Wishes(withCustomer, saying.languageProperty().get(), Sheet.LETTER));
    }

    private Field person() {
        Field person = new Field(saying.text("ui.claim.person"), "claim-person");
        person.text().textProperty().bindBidirectional(model.personProperty());
        return person;
    }

    private void askPhoto(Path dropped) {
        Field file = new Field(saying.text("ui.claim.photo.file"), "claim-photo-file");
        file.text().setText(dropped.toString());
        Field person = person();
        BooleanBinding given = file.text()
                .textProperty()
                .isNotEmpty()
                .and(model.personProperty().isNotEmpty());
        List<Action> answers = new ArrayList<>();
        for (Shows shows : List.of(Shows.PLATE, Shows.CONNECTOR, Shows.PORTS, Shows.WHOLE, Shows.DAMAGE)) {
            answers.add(Action.of(
                            saying.text(shows.key()),
                            () -> model.photo(Path.of(path(file.text().getText())), shows))
                    .when(given));
        }
        answers.add(Action.of(saying.text("ui.cancel"), () -> {}));
        frame.ask(new Prompt(
                saying.text("ui.claim.photo.ask"),
                saying.text("ui.claim.photo.text"),
                Optional.of(new VBox(file, person)),
                answers));
        file.text().requestFocus();
    }

    /** File managers hand paths over in quotes or as addresses. */
    private static String path(String pasted) {
        String plain = pasted.strip();
        if (plain.startsWith("file:")) {
            return Path.of(URI.create(plain)).toString();
        }
        return plain.replaceAll("^[\"']|[\"']$", "");
    }

    private void askMove() {
        ClaimView view = model.shownProperty().get().orElseThrow();
        Field place = new Field(saying.text("ui.claim.place"), "claim-place");
        Field person = person();
        BooleanBinding named = model.personProperty().isNotEmpty();
        BooleanBinding placed = named.and(place.text().textProperty().isNotEmpty());
        List<Action> answers = new ArrayList<>();
        boolean decided = view.file().decision().isPresent();
        for (CustodyState to : view.file().whereabouts().to().next()) {
            if (answers.size() < MOST_MOVES && (decided || !to.needsDecision())) {
                answers.add(Action.of(
                                saying.text(to.key()),
                                () -> model.move(to, place.text().getText()))
                        .when(placed));
            }
        }
        while (answers.size() < MOST_MOVES) {
            answers.add(Action.nothing());
        }
        answers.add(
                view.file().intake().decontamination().confirmed()
                        ? Action.nothing()
                        : Action.of(saying.text("ui.claim.rinsed"), () -> model.rinsed(USUAL_RINSES))
                                .when(named));
        answers.add(Action.of(saying.text("ui.cancel"), () -> {}));
        frame.ask(new Prompt(
                saying.text("ui.claim.move.ask"),
                saying.text("ui.claim.move.text"),
                Optional.of(new VBox(person, place)),
                answers));
        person.text().requestFocus();
    }
}
