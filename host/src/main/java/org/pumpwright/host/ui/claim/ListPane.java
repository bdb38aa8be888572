package org.pumpwright.host.ui.claim;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.control.Segments;
import org.pumpwright.host.ui.work.ClaimListModel;
import org.pumpwright.host.ui.work.ClaimListModel.Which;
import org.pumpwright.host.ui.work.ClaimModel;

/** The claims of the shop: what waits, how long, whose move it is; by state, or looked for. JavaFX thread only. */
final class ListPane implements Pane {
    private final Saying saying;
    private final ClaimModel model;
    private final ClaimListModel claims;
    private final Runnable newClaim;
    private final VBox node = new VBox();
    private final TextField sought = new TextField();
    private final RowList list;

    ListPane(Saying saying, ClaimModel model, Runnable newClaim) {
        this.saying = saying;
        this.model = model;
        this.claims = model.list();
        this.newClaim = newClaim;
        list = new RowList(saying, claims.rows());
        list.setId("claim-list");
        node.getStyleClass().add("claim-list");
        sought.setId("claim-sought");
        sought.textProperty().bindBidirectional(claims.soughtProperty());
        sought.promptTextProperty().bind(saying.text("ui.claim.sought"));
        sought.setOnAction(enter -> openFirst());
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
        node.getChildren().addAll(head(), which(), list);
    }

    private Node head() {
        Label headline = new Label();
        headline.setId("claim-headline");
        headline.getStyleClass().add("headline");
        headline.setWrapText(true);
        headline.setMinHeight(Label.USE_PREF_SIZE);
        headline.setMaxWidth(Double.MAX_VALUE);
        headline.textProperty().bind(saying.text(claims.headlineProperty()));
        HBox.setHgrow(headline, Priority.ALWAYS);
        HBox head = new HBox(headline, sought);
        head.getStyleClass().add("claim-search");
        return head;
    }

    private Node which() {
        Segments<Which> which = new Segments<>(Arrays.asList(Which.values()), each -> saying.text(each.key()), "which");
        which.getStyleClass().add("claim-which");
        which.setMinHeight(Segments.USE_PREF_SIZE);
        which.chosenProperty().set(Optional.of(claims.whichProperty().get()));
        which.chosenProperty()
                .addListener((observed, old, now) -> now.ifPresent(state -> {
                    claims.soughtProperty().set("");
                    claims.whichProperty().set(state);
                }));
        return which;
    }

    private void open() {
        model.open(list.getSelectionModel().getSelectedIndex());
    }

    private void openFirst() {
        if (claims.rows().size() == 1) {
            model.open(0);
        } else {
            list.requestFocus();
            list.getSelectionModel().select(0);
        }
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
                Action.of(saying.text("ui.claim.look_for"), sought::requestFocus),
                Action.of(
                                saying.text("ui.claim.show_all"),
                                () -> claims.soughtProperty().set(""))
                        .when(claims.soughtProperty().isNotEmpty()),
                Action.nothing(),
                Action.of(saying.text("ui.claim.again"), claims::refresh));
    }
}
