package org.pumpwright.host.ui;

import java.util.List;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.css.PseudoClass;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.RowConstraints;
import org.pumpwright.host.ui.control.BigButton;

/** The six big actions of the screen in front, at keys F1 to F6. An empty place shows no button. JavaFX thread only. */
final class ActionBar extends GridPane {
    /** How many actions there can be. */
    static final int PLACES = 6;

    private static final PseudoClass NEXT = PseudoClass.getPseudoClass("next");

    private final ListChangeListener<Action> follow = change -> build();
    private ObservableList<Action> actions = FXCollections.observableArrayList();

    ActionBar() {
        getStyleClass().add("action-bar");
        for (int place = 0; place < PLACES; place++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(100.0 / PLACES);
            getColumnConstraints().add(column);
        }
        RowConstraints row = new RowConstraints();
        row.setVgrow(Priority.ALWAYS);
        getRowConstraints().add(row);
    }

    /** Shows these actions from now on, and follows the list. */
    void show(ObservableList<Action> shown) {
        actions.removeListener(follow);
        actions = shown;
        shown.addListener(follow);
        build();
    }

    /** Does the action at a place, counted from 0, when there is one and it can be done. */
    void perform(int place) {
        if (place < actions.size()) {
            actions.get(place).perform();
        }
    }

    /** Does the first action that can be done. */
    void performNext() {
        List<Action> now = List.copyOf(actions);
        now.stream().filter(action -> action.enabled().get()).findFirst().ifPresent(Action::perform);
    }

    private void build() {
        getChildren().clear();
        for (int place = 0; place < PLACES; place++) {
            add(place < actions.size() ? button(actions.get(place), place) : blank(), place, 0);
        }
    }

    private static Region button(Action action, int place) {
        if (action.isNothing()) {
            return blank();
        }
        BigButton button = new BigButton(action.word(), "F" + (place + 1));
        button.setId("action-" + (place + 1));
        button.pseudoClassStateChanged(NEXT, action.isNext());
        button.disableProperty().bind(action.enabled().not());
        button.setOnAction(pressed -> action.perform());
        return button;
    }

    private static Region blank() {
        Region blank = new Region();
        blank.getStyleClass().add("action-blank");
        return blank;
    }
}
