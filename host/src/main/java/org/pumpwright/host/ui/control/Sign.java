package org.pumpwright.host.ui.control;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.css.PseudoClass;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.pumpwright.host.ui.work.Mark;

/** A mark as a shape: disc with a tick, triangle, square with a cross, ring. JavaFX thread only. */
public final class Sign extends StackPane {
    private final ObjectProperty<Mark> mark = new SimpleObjectProperty<>();

    /** Shows a mark. */
    public Sign(Mark first) {
        getStyleClass().add("sign");
        Region body = new Region();
        body.getStyleClass().add("sign-body");
        Region cut = new Region();
        cut.getStyleClass().add("sign-cut");
        getChildren().addAll(body, cut);
        mark.addListener((observed, old, now) -> show(now));
        mark.set(first);
    }

    /** What it shows. */
    public ObjectProperty<Mark> markProperty() {
        return mark;
    }

    private void show(Mark now) {
        for (Mark each : Mark.values()) {
            pseudoClassStateChanged(PseudoClass.getPseudoClass(each.style()), each == now);
        }
    }
}
