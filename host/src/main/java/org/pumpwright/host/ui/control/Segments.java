package org.pumpwright.host.ui.control;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/**
 * A choice among a few that lie side by side; the chosen one is filled and has a tick in front. JavaFX thread only.
 *
 * @param <T> what is chosen
 */
public final class Segments<T> extends HBox {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final ObjectProperty<Optional<T>> chosen = new SimpleObjectProperty<>(Optional.empty());
    private final List<Button> buttons = new ArrayList<>();

    /** Nothing is chosen yet. */
    public Segments(List<T> choices, Function<T, ObservableValue<String>> word, String id) {
        getStyleClass().add("segments");
        for (T choice : choices) {
            Button button = new Button();
            button.getStyleClass().add("segment");
            button.setId(id + "-" + choice);
            button.setMaxWidth(Double.MAX_VALUE);
            button.setWrapText(true);
            ObservableValue<String> text = word.apply(choice);
            button.textProperty().bind(text);
            button.setOnAction(press -> chosen.set(Optional.of(choice)));
            chosen.addListener((observed, old, now) -> button.pseudoClassStateChanged(
                    CHOSEN, now.filter(choice::equals).isPresent()));
            HBox.setHgrow(button, Priority.ALWAYS);
            buttons.add(button);
        }
        getChildren().addAll(buttons);
    }

    /** What is chosen. */
    public ObjectProperty<Optional<T>> chosenProperty() {
        return chosen;
    }
}
