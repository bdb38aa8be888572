package org.pumpwright.host.ui.claim;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.claim.DecisionDesk.DecisionAsked;
import org.pumpwright.host.claim.CoverageDecision.Outcome;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.control.Segments;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.Word;

/** The desk decides and signs, never by the hand that measured; what the rules say stands beside it and decides nothing. JavaFX thread only. */
final class DecisionPane implements Pane {
    private final Saying saying;
    private final ClaimModel model;
    private final Runnable done;
    private final HBox node = new HBox();
    private final Segments<Outcome> outcome;
    private final Field reason;
    private final Field signer;
    private final Field second;
    private final Field amount;

    DecisionPane(Saying saying, ClaimModel model, Runnable done) {
        this.saying = saying;
        this.model = model;
        this.done = done;
        RowList weighed = new RowList(saying, model.weighed());
        HBox.setHgrow(weighed, Priority.ALWAYS);
        outcome = new Segments<>(Arrays.asList(Outcome.values()), each -> saying.text(each.key()), "outcome");
        reason = new Field(saying.text("ui.claim.reason"), "decision-reason");
        signer = new Field(saying.text("ui.claim.signer"), "decision-signer");
        second = new Field(saying.text("ui.claim.second"), "decision-second");
        amount = new Field(saying.text("ui.claim.amount"), "decision-amount");
        HBox signers = new HBox(signer, second);
        signers.getStyleClass().add("field-row");
        HBox.setHgrow(signer, Priority.ALWAYS);
        HBox.setHgrow(second, Priority.ALWAYS);
        Label warning = new Label();
        warning.setId("decision-warning");
        warning.getStyleClass().add("claim-warning");
        warning.setWrapText(true);
        warning.textProperty()
                .bind(saying.text(signer.text()
                        .textProperty()
                        .map(name -> model.measured(name) ? Word.of("ui.claim.same_hand", name.strip()) : Word.NONE)));
        warning.managedProperty().bind(warning.textProperty().isNotEmpty());
        warning.setMinHeight(Label.USE_PREF_SIZE);
        VBox form = new VBox(outcome, reason, signers, warning, amount);
        form.getStyleClass().add("claim-form");
        node.getStyleClass().add("claim-decision");
        node.setMinHeight(0);
        node.getChildren().addAll(weighed, form);
    }

    void begin() {
        outcome.chosenProperty().set(Optional.empty());
        reason.text().clear();
        second.text().clear();
        amount.text().clear();
        String person = model.personProperty().get();
        signer.text().setText(model.measured(person) ? "" : person);
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public List<Action> actions() {
        BooleanBinding whole = Bindings.createBooleanBinding(
                () -> outcome.chosenProperty().get().isPresent()
                        && !reason.text().getText().isBlank()
                        && !signer.text().getText().isBlank()
                        && !model.measured(signer.text().getText()),
                outcome.chosenProperty(),
                reason.text().textProperty(),
                signer.text().textProperty());
        return List.of(
                Action.of(saying.text("ui.claim.sign"), this::sign)
                        .when(whole.and(model.busyProperty().not()))
                        .asNext(),
                Action.nothing(),
                Action.nothing(),
                Action.nothing(),
                Action.nothing(),
                Action.of(saying.text("ui.cancel"), done));
    }

    private void sign() {
        try {
            String other = second.text().getText().strip();
            model.decide(
                    new DecisionAsked(
                            outcome.chosenProperty().get().orElseThrow(),
                            reason.text().getText(),
                            signer.text().getText(),
                            other.isEmpty() ? Optional.empty() : Optional.of(other),
                            ClaimModel.amount(amount.text().getText())),
                    done);
        } catch (OrderException e) {
            model.complain(e);
        }
    }
}
