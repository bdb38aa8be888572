package org.pumpwright.host.ui;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The moments of the work as a column of large tags; only those that have a screen. JavaFX thread only. */
final class MomentRail extends VBox {
    private static final PseudoClass CURRENT = PseudoClass.getPseudoClass("current");

    private final Saying saying;
    private final Consumer<Moment> chosen;
    private final Map<Moment, Button> tags = new EnumMap<>(Moment.class);

    MomentRail(Saying saying, Consumer<Moment> chosen) {
        this.saying = saying;
        this.chosen = chosen;
        getStyleClass().add("moment-rail");
    }

    /** Adds the tag of a moment, in its order. */
    void add(Moment moment) {
        Label digit = new Label(Integer.toString(moment.digit()));
        digit.getStyleClass().add("moment-digit");
        Button tag = new Button();
        tag.setId("moment-" + moment.key());
        tag.getStyleClass().add("moment");
        tag.setGraphic(digit);
        tag.setAlignment(Pos.CENTER_LEFT);
        tag.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        tag.textProperty().bind(saying.text("ui.moment." + moment.key()));
        tag.setOnAction(pressed -> chosen.accept(moment));
        VBox.setVgrow(tag, Priority.ALWAYS);
        tags.put(moment, tag);
        getChildren().setAll(tags.values());
    }

    /** Marks the moment whose screen is in front. */
    void mark(Moment moment) {
        tags.forEach((each, tag) -> tag.pseudoClassStateChanged(CURRENT, each == moment));
    }
}
