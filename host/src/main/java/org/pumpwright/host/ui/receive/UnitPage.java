package org.pumpwright.host.ui.receive;

import static org.pumpwright.host.ui.receive.FormParts.column;
import static org.pumpwright.host.ui.receive.FormParts.field;
import static org.pumpwright.host.ui.receive.FormParts.grid;
import static org.pumpwright.host.ui.receive.FormParts.heading;
import static org.pumpwright.host.ui.receive.FormParts.label;
import static org.pumpwright.host.ui.receive.FormParts.signed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.ChoiceButton;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.control.WholeRows;
import org.pumpwright.host.ui.work.ComplaintChoice;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Product;
import org.pumpwright.host.ui.work.ReceiveModel;
import org.pumpwright.host.ui.work.Rinsing;
import org.pumpwright.host.ui.work.Word;

/** The page with everything that a unit can't be taken in without, in three columns. JavaFX thread only. */
final class UnitPage extends HBox {
    private static final double HIGHEST_EMS = 6;

    private final Saying saying;
    private final ReceiveModel model;
    private final RinsePrompt rinse;
    private final WholeRows models = new WholeRows(1, HIGHEST_EMS);
    private final TextField claim;

    UnitPage(Saying saying, ReceiveModel model, RinsePrompt rinse) {
        this.saying = saying;
        this.model = model;
        this.rinse = rinse;
        claim = ClaimPage.claimField("claim", model);
        getStyleClass().add("columns");
        setMinHeight(0);
        Node complaint = complaintColumn();
        HBox.setHgrow(complaint, Priority.ALWAYS);
        getChildren().addAll(unitColumn(), paperColumn(), complaint);
        model.unit().shown().addListener((ListChangeListener<UnitModel>) change -> showModels());
        model.unit().modelProperty().addListener((observed, old, now) -> now.ifPresent(this::bringIntoSight));
        models.viewportBoundsProperty()
                .addListener((observed, old, now) ->
                        model.unit().modelProperty().get().ifPresent(this::bringIntoSight));
        showModels();
    }

    /** The chosen model may have been chosen by the claim, far down the list. */
    private void bringIntoSight(UnitModel chosen) {
        models.choices().stream()
                .filter(button -> button.getId().equals("model-" + chosen.id()))
                .findFirst()
                .ifPresent(models::bringIntoSight);
    }

    /** Whether what is scanned now is a claim number, because the cursor stands there. */
    boolean isAtClaim() {
        return claim.isFocused();
    }

    private Node unitColumn() {
        VBox.setVgrow(models, Priority.ALWAYS);
        TextField filter = field("filter", model.unit().filterProperty());
        filter.promptTextProperty().bind(saying.text("ui.receive.filter"));
        List<Node> products = new ArrayList<>();
        for (Product product : Product.values()) {
            ChoiceButton button = new ChoiceButton(
                    saying.text(product.word()),
                    () -> model.rinsing().productProperty().set(Optional.of(product)));
            button.setId("product-" + products.size());
            button.chosenProperty()
                    .bind(model.rinsing().productProperty().map(now -> now.equals(Optional.of(product))));
            products.add(button);
        }
        return column(
                "column-unit",
                heading(saying.text("ui.receive.model")),
                filter,
                models,
                heading(saying.text("ui.receive.product")),
                grid(products));
    }

    private Node paperColumn() {
        TextField serial = field("serial", model.serialProperty());
        serial.disableProperty().bind(model.noPlateProperty());
        HBox.setHgrow(serial, Priority.ALWAYS);
        ChoiceButton noPlate = new ChoiceButton(
                saying.text("ui.receive.no_plate"),
                () -> model.noPlateProperty().set(!model.noPlateProperty().get()));
        noPlate.setId("no-plate");
        noPlate.chosenProperty().bind(model.noPlateProperty());
        HBox plate = new HBox(serial, noPlate);
        plate.getStyleClass().add("pair");
        VBox who = new VBox(
                heading(saying.text("ui.receive.technician")),
                field("technician", model.technicians().nameProperty()));
        VBox which = new VBox(heading(saying.text("ui.receive.claim")), claim);
        who.getStyleClass().add("under-heading");
        which.getStyleClass().add("under-heading");
        HBox names = new HBox(who, which);
        names.getStyleClass().add("pair");
        return column(
                "column-paper",
                heading(saying.text("ui.receive.serial")),
                plate,
                names,
                ClaimPage.standing(saying, model),
                rinsed(),
                caution());
    }

    private Node rinsed() {
        ChoiceButton clean = new ChoiceButton(saying.text("ui.receive.clean"), rinse::flipClean);
        clean.setId("clean");
        clean.chosenProperty().bind(model.rinsing().stateProperty().map(now -> now == Rinsing.State.CLEAN));
        ChoiceButton not = new ChoiceButton(saying.text("ui.receive.not_clean"), rinse::askWhoAnswers);
        not.setId("not-clean");
        not.chosenProperty().bind(model.rinsing().stateProperty().map(now -> now == Rinsing.State.ANSWERED_FOR));
        return grid(List.of(clean, not));
    }

    private Node caution() {
        ObservableValue<Word> word = model.rinsing()
                .productProperty()
                .map(product -> product.map(Product::caution).orElse(Word.of("ui.receive.caution")));
        Label caution = label("caution-words", saying.text(word));
        return signed(new Sign(Mark.WATCH), caution, "caution");
    }

    private Node complaintColumn() {
        List<Node> all = new ArrayList<>();
        for (ComplaintChoice choice : ComplaintChoice.all()) {
            ChoiceButton button = new ChoiceButton(
                    saying.text(choice.word()),
                    () -> model.unit().complaintProperty().set(Optional.of(choice)));
            button.setId("complaint-" + all.size());
            button.chosenProperty().bind(model.unit().complaintProperty().map(now -> now.equals(Optional.of(choice))));
            all.add(button);
        }
        return column("column-complaint", heading(saying.text("ui.receive.complaint")), grid(all));
    }

    private void showModels() {
        models.show(model.unit().shown().stream().map(this::button).toList());
    }

    private ChoiceButton button(UnitModel each) {
        ChoiceButton button = new ChoiceButton(
                new SimpleObjectProperty<>(each.title()),
                () -> model.unit().modelProperty().set(Optional.of(each)));
        button.setId("model-" + each.id());
        button.getStyleClass().add("data");
        button.chosenProperty().bind(model.unit().modelProperty().map(now -> now.equals(Optional.of(each))));
        return button;
    }
}
