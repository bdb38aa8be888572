package org.pumpwright.host.ui.bucket;

import javafx.beans.value.ObservableBooleanValue;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Palette;
import org.pumpwright.host.ui.control.RepeatDots;
import org.pumpwright.host.ui.control.RepeatLane;
import org.pumpwright.host.ui.work.BucketProgress;
import org.pumpwright.host.ui.work.FlowRuns;

/** How the runs of a bucket test repeat, flow by flow. JavaFX thread only. */
final class RepeatsPane extends VBox {
    private final BucketProgress progress;
    private final RepeatDots dots = new RepeatDots();

    RepeatsPane(Saying saying, BucketProgress progress, ObservableBooleanValue dark) {
        this.progress = progress;
        getStyleClass().add("bucket-right");
        Label caption = new Label();
        caption.getStyleClass().add("bucket-caption");
        caption.setWrapText(true);
        caption.textProperty().bind(saying.text("ui.bucket.dots"));
        dots.paletteProperty().bind(Palette.of(dark));
        VBox.setVgrow(dots, Priority.ALWAYS);
        getChildren().addAll(caption, dots);
        progress.flows().addListener((ListChangeListener<FlowRuns>) change -> show());
        show();
    }

    private void show() {
        dots.lanesProperty()
                .set(progress.flows().stream()
                        .map(flow -> new RepeatLane(flow.duty().print(), flow.k(), flow.planned(), flow.gateShare()))
                        .toList());
    }
}
