package org.pumpwright.host.ui.claim;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.Word;

/** The claims in the shop, by state and age. JavaFX thread only. */
final class ListPane implements Pane {
    private final Saying saying;
    private final ClaimModel model;
    private final Runnable newClaim;
    private final VBox node = new VBox();
    private final RowList list;

    ListPane(Saying saying, ClaimModel model, Runnable newClaim) {
        this.saying = saying;
        this.model = model;
        this.newClaim = newClaim;
        list = new RowList(saying, model.rows());
        list.setId("claim-list");
        node.getStyleClass().add("claim-list");
        Label headline = new Label();
        headline.getStyleClass().add("headline");
        headline.setWrapText(true);
        headline.textProperty().bind(saying.text(model.headlineProperty()));
        list.setOnKeyPressed(press -> {
            if (press.getCode() == KeyCode.ENTER) {
                open();
            }
        });
        list.setOnMouseClicked(click -> {
            if (click.getClickCount() == 2) {
                open();
            }
        });
        VBox.setVgrow(list, Priority.ALWAYS);
        node.getChildren().addAll(headline, list);
    }

    private void open() {
        model.open(list.getSelectionModel().getSelectedIndex());
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public List<Action> actions() {
        return List.of(
                Action.of(saying.text("ui.claim.open"), this::open)
                        .when(Bindings.isNotNull(list.getSelectionModel().selectedItemProperty()))
                        .asNext(),
                Action.of(saying.text("ui.claim.new"), newClaim),
                Action.of(
                        saying.text(model.closedTooProperty()
                                .map(all -> Word.of(all ? "ui.claim.only_here" : "ui.claim.left_too"))),
                        model::flipClosed),
                Action.nothing(),
                Action.nothing(),
                Action.nothing());
    }
}
