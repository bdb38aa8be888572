package org.pumpwright.host.ui.claim;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.app.claim.DecisionDesk.FindingAsked;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.Reproduced;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.control.Segments;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Row;
import org.pumpwright.host.ui.work.Word;

/** A technician signs what was found: a neutral category, whether the complaint showed, and what that rests on. JavaFX thread only. */
final class FindingPane implements Pane {
    private final Saying saying;
    private final ClaimModel model;
    private final Runnable done;
    private final HBox node = new HBox();
    private final RowList categories;
    private final Segments<Reproduced> reproduced;
    private final Field basis;
    private final Field parts;
    private final Field signer;

    FindingPane(Saying saying, ClaimModel model, Runnable done) {
        this.saying = saying;
        this.model = model;
        this.done = done;
        categories = new RowList(
                saying,
                FXCollections.observableArrayList(Arrays.stream(Category.values())
                        .map(each -> new Row(Word.asIs(each.name()), Mark.UNKNOWN, Word.of(each.key()), Word.NONE))
                        .toList()));
        categories.setId("finding-categories");
        HBox.setHgrow(categories, Priority.ALWAYS);
        Label showed = new Label();
        showed.getStyleClass().add("field-name");
        showed.setWrapText(true);
        showed.textProperty().bind(saying.text("ui.claim.reproduced"));
        reproduced = new Segments<>(Arrays.asList(Reproduced.values()), each -> saying.text(each.key()), "reproduced");
        basis = new Field(saying.text("ui.claim.basis"), "finding-basis");
        parts = new Field(saying.text("ui.claim.parts"), "finding-parts");
        signer = new Field(saying.text("ui.claim.signer"), "finding-signer");
        VBox form = new VBox(showed, reproduced, basis, parts, signer);
        form.getStyleClass().add("claim-form");
        node.getStyleClass().add("claim-finding");
        node.setMinHeight(0);
        node.getChildren().addAll(categories, form);
    }

    void begin() {
        categories.getSelectionModel().clearSelection();
        reproduced.chosenProperty().set(Optional.empty());
        basis.text().clear();
        parts.text().clear();
        signer.text().setText(model.personProperty().get());
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public List<Action> actions() {
        BooleanBinding whole = Bindings.createBooleanBinding(
                () -> categories.getSelectionModel().getSelectedItem() != null
                        && reproduced.chosenProperty().get().isPresent()
                        && !basis.text().getText().isBlank()
                        && !signer.text().getText().isBlank(),
                categories.getSelectionModel().selectedItemProperty(),
                reproduced.chosenProperty(),
                basis.text().textProperty(),
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
        String code = "C" + (categories.getSelectionModel().getSelectedIndex() + 1);
        model.find(
                new FindingAsked(
                        Category.ofWord(code.toLowerCase(Locale.ROOT)),
                        reproduced.chosenProperty().get().orElseThrow(),
                        basis.text().getText(),
                        Arrays.stream(parts.text().getText().split(",", -1))
                                .map(String::strip)
                                .filter(part -> !part.isEmpty())
                                .toList(),
                        signer.text().getText(),
                        Optional.empty()),
                done);
    }
}
