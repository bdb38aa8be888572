package org.pumpwright.host.ui.run;

import javafx.beans.value.ObservableDoubleValue;
import javafx.scene.layout.Region;

/** How far a run is: a bar that fills from the left. JavaFX thread only. */
final class ProgressStrip extends Region {
    private final Region done = new Region();
    private final ObservableDoubleValue share;

    /** Shows this share, 0 to 1. */
    ProgressStrip(ObservableDoubleValue share) {
        this.share = share;
        getStyleClass().add("progress-strip");
        done.getStyleClass().add("progress-done");
        getChildren().add(done);
        share.addListener((observed, old, now) -> requestLayout());
    }

    @Override
    protected void layoutChildren() {
        double edge = snappedLeftInset();
        double width = getWidth() - edge - snappedRightInset();
        done.resizeRelocate(
                edge,
                snappedTopInset(),
                snapSizeX(width * share.get()),
                getHeight() - snappedTopInset() - snappedBottomInset());
    }
}
