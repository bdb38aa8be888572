package org.pumpwright.host.ui.receive;

import static org.pumpwright.host.ui.receive.FormParts.column;
import static org.pumpwright.host.ui.receive.FormParts.field;
import static org.pumpwright.host.ui.receive.FormParts.grid;
import static org.pumpwright.host.ui.receive.FormParts.heading;
import static org.pumpwright.host.ui.receive.FormParts.label;
import static org.pumpwright.host.ui.receive.FormParts.signed;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.ChoiceButton;
import org.pumpwright.host.ui.control.FactList;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.work.ClaimInHand;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.ReceiveModel;
import org.pumpwright.host.ui.work.Word;

/** The page with what the desk knows of the claim, its pictures, and who tested lately. JavaFX thread only. */
final class ClaimPage extends HBox {
    private final Saying saying;
    private final ReceiveModel model;
    private final VBox names = new VBox();

    ClaimPage(Frame frame, ReceiveModel model) {
        this.saying = frame.saying();
        this.model = model;
        getStyleClass().add("columns");
        setMinHeight(0);
        Node claim = claimColumn();
        HBox.setHgrow(claim, Priority.ALWAYS);
        getChildren().addAll(claim, personColumn(frame));
        model.technicians().recent().addListener((ListChangeListener<String>) change -> showNames());
        showNames();
    }

    /** A field for the number of the claim: the desk is asked once it is whole. */
    static TextField claimField(String id, ReceiveModel model) {
        TextField claim = field(id, model.claim().numberProperty());
        claim.setOnAction(entered -> model.claim().lookUp());
        claim.focusedProperty().addListener((observed, old, now) -> {
            if (!now) {
                model.claim().lookUp();
            }
        });
        return claim;
    }

    /** In one line: whether the claim is at the desk, or what does not fit it. */
    static Node standing(Saying saying, ReceiveModel model) {
        ClaimInHand claim = model.claim();
        ObservableValue<Word> word = Bindings.createObjectBinding(
                () -> model.differences().isEmpty()
                        ? claim.stateProperty().get().word()
                        : model.differences().get(0),
                claim.stateProperty(),
                model.differences());
        Sign sign = new Sign(Mark.UNKNOWN);
        sign.markProperty()
                .bind(Bindings.createObjectBinding(
                        () -> model.differences().isEmpty()
                                ? claim.stateProperty().get().mark()
                                : Mark.BAD,
                        claim.stateProperty(),
                        model.differences()));
        return signed(sign, label("claim-standing", saying.text(word)), "standing");
    }

    private Node claimColumn() {
        TextField number = claimField("claim-number", model);
        FactList facts = new FactList(saying, model.claim().facts());
        VBox.setVgrow(facts, Priority.ALWAYS);
        return column("column-claim", heading(saying.text("ui.receive.claim")), number, standing(saying, model), facts);
    }

    private Node personColumn(Frame frame) {
        names.getStyleClass().add("choices");
        return column(
                "column-person",
                heading(saying.text("ui.receive.technician")),
                field("technician-name", model.technicians().nameProperty()),
                names,
                new PhotoPart(frame, model));
    }

    private void showNames() {
        List<Node> buttons = new ArrayList<>();
        for (String each : model.technicians().recent()) {
            ChoiceButton button = new ChoiceButton(
                    new SimpleObjectProperty<>(each),
                    () -> model.technicians().nameProperty().set(each));
            button.setId("name-" + buttons.size());
            button.getStyleClass().add("data");
            button.chosenProperty()
                    .bind(model.technicians()
                            .nameProperty()
                            .map(now -> now.strip().equals(each)));
            buttons.add(button);
        }
        names.getChildren().setAll(grid(buttons));
    }
}
