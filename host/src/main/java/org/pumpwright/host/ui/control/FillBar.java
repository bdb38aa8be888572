package org.pumpwright.host.ui.control;

import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.scene.layout.Region;

/** How far something has come, as a filled part of a bar. JavaFX thread only. */
public final class FillBar extends Region {
    private final Region fill = new Region();
    private final DoubleProperty share = new SimpleDoubleProperty();

    /** An empty bar. */
    public FillBar() {
        getStyleClass().add("fill-bar");
        fill.getStyleClass().add("fill");
        fill.setManaged(false);
        getChildren().add(fill);
        share.addListener((observed, old, now) -> requestLayout());
    }

    /** From 0 to 1; more is shown as 1. */
    public DoubleProperty shareProperty() {
        return share;
    }

    @Override
    protected void layoutChildren() {
        double full = getWidth() - snappedLeftInset() - snappedRightInset();
        double part = Math.max(0, Math.min(1, share.get()));
        fill.resizeRelocate(
                snappedLeftInset(),
                snappedTopInset(),
                full * part,
                getHeight() - snappedTopInset() - snappedBottomInset());
    }
}
