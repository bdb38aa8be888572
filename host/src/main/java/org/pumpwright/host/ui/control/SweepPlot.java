package org.pumpwright.host.ui.control;

import javafx.beans.value.ObservableBooleanValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.RunModel;

/** The sweep of a run in the units of the moment, with what its marks mean. JavaFX thread only. */
public final class SweepPlot extends StackPane {
    private final Saying saying;
    private final RunModel model;
    private final LivePlot plot;

    /**
     * Draws the sweep of these runs and follows it.
     *
     * @param dark whether the window is dark
     */
    public SweepPlot(Saying saying, RunModel model, ObservableBooleanValue dark) {
        this.saying = saying;
        this.model = model;
        plot = new LivePlot(
                saying.text("ui.run.plot.across"),
                saying.text("ui.run.plot.up", saying.unitsProperty().map(ShownUnits::flow)));
        plot.paletteProperty().bind(Palette.of(dark));
        Label legend = new Label();
        legend.getStyleClass().add("plot-legend");
        legend.textProperty().bind(saying.text("ui.run.plot.legend"));
        setAlignment(legend, Pos.TOP_RIGHT);
        getStyleClass().add("plot-box");
        setMinSize(0, 0);
        getChildren().addAll(plot, legend);
        model.view().sweepProperty().addListener((observed, old, now) -> show());
        saying.unitsProperty().addListener((observed, old, now) -> show());
        show();
    }

    private void show() {
        UnitSystem units = saying.unitsProperty().get();
        plot.pictureProperty()
                .set(CurvePicture.of(model.view().sweepProperty().get(), flow -> ShownUnits.flow(flow, units)));
    }
}
