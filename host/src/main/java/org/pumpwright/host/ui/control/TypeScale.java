package org.pumpwright.host.ui.control;

import javafx.scene.text.Text;

/**
 * How much larger the window's type is than in the smallest window; what is drawn by hand grows with it. It shows nothing, but hears of the
 * style sheet's size as its parent does. JavaFX thread only.
 */
final class TypeScale extends Text {
    private static final double LEAST_TYPE = 18;

    /**
     * Follows the type.
     *
     * @param changed called when it has changed
     */
    TypeScale(Runnable changed) {
        getStyleClass().add("type-scale");
        setManaged(false);
        setVisible(false);
        fontProperty().addListener((observed, old, now) -> changed.run());
    }

    /** 1 in the smallest window. */
    double scale() {
        return Math.max(1, getFont().getSize() / LEAST_TYPE);
    }
}
