package org.pumpwright.host.ui.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CustodyRules;
import org.pumpwright.host.claim.CustodyState;
import org.pumpwright.host.claim.RefusedException;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Prompt;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.control.Segments;
import org.pumpwright.host.ui.work.ClaimDeeds;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.ClaimView;

/** Asks where a unit goes, in whose hands, and with which tag; the keys offer what is allowed from where it is. JavaFX thread only. */
final class MovePrompt {
    private static final int MOST_MOVES = 5;

    private final Frame frame;
    private final Saying saying;
    private final ClaimModel model;

    MovePrompt(Frame frame, ClaimModel model) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
    }

    /** Where the unit may go now. */
    static List<CustodyState> allowed(ClaimFile file) {
        return file.whereabouts().to().next().stream()
                .filter(to -> isAllowed(file, to))
                .limit(MOST_MOVES)
                .toList();
    }

    private static boolean isAllowed(ClaimFile file, CustodyState to) {
        try {
            CustodyRules.check(file, to);
            return true;
        } catch (RefusedException e) {
            return false;
        }
    }

    void ask() {
        ClaimView view = model.shownProperty().get().orElseThrow();
        Field place = new Field(saying.text("ui.claim.place"), "claim-place");
        Field person = new Field(saying.text("ui.claim.person"), "claim-person");
        person.text().textProperty().bindBidirectional(model.personProperty());
        Field tag = new Field(saying.text("ui.claim.new_tag"), "claim-tag");
        Segments<String> colour = colours(view);
        FormColumn form = new FormColumn(saying)
                .with(person, place)
                .with(tag)
                .titled("ui.claim.tag_colour")
                .with(colour);
        form.getStyleClass().setAll("prompt-form");
        BooleanBinding whole = model.personProperty()
                .isNotEmpty()
                .and(place.text().textProperty().isNotEmpty());
        List<Action> answers = new ArrayList<>();
        for (CustodyState to : allowed(view.file())) {
            answers.add(Action.of(
                            saying.text(to.key()),
                            () -> model.deeds()
                                    .move(new ClaimDeeds.Move(
                                            to,
                                            place.text().getText(),
                                            tag.text().getText(),
                                            colour.chosenProperty().get())))
                    .when(whole));
        }
        while (answers.size() < MOST_MOVES) {
            answers.add(Action.nothing());
        }
        answers.add(Action.of(saying.text("ui.cancel"), () -> {}));
        frame.ask(new Prompt(
                saying.text("ui.claim.move.ask"), saying.text("ui.claim.move.text"), Optional.of(form), answers));
        (model.personProperty().get().isEmpty() ? person : place).text().requestFocus();
    }

    /** The colours are words of the shop's own file, the same in every language. */
    private static Segments<String> colours(ClaimView view) {
        Segments<String> colours = new Segments<>(
                List.copyOf(view.tagColours().keySet()),
                word -> new ReadOnlyStringWrapper(
                        word + "\n" + view.tagColours().get(word)),
                "tag");
        for (Node each : colours.getChildren()) {
            each.getStyleClass().add("data");
            if (each instanceof Region button) {
                button.setMaxHeight(Double.MAX_VALUE);
            }
        }
        return colours;
    }
}
