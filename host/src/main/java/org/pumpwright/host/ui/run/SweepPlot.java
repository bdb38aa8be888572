package org.pumpwright.host.ui.run;

import java.util.function.DoubleUnaryOperator;
import javafx.beans.value.ObservableBooleanValue;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.CurvePicture;
import org.pumpwright.host.ui.control.CurvePicture.Standing;
import org.pumpwright.host.ui.control.CurvePicture.Way;
import org.pumpwright.host.ui.control.LivePlot;
import org.pumpwright.host.ui.control.Palette;
import org.pumpwright.host.ui.work.RunModel;
import org.pumpwright.host.ui.work.SweepView;

/** The sweep of a run in the units of the moment. JavaFX thread only. */
final class SweepPlot {
    private final Saying saying;
    private final RunModel model;
    private final LivePlot plot;

    SweepPlot(Saying saying, RunModel model, ObservableBooleanValue dark) {
        this.saying = saying;
        this.model = model;
        plot = new LivePlot(
                saying.text("ui.run.plot.across"),
                saying.text("ui.run.plot.up", saying.unitsProperty().map(ShownUnits::flow)));
        plot.paletteProperty().bind(dark.map(now -> now ? Palette.DARK : Palette.LIGHT));
        model.view().sweepProperty().addListener((observed, old, now) -> show());
        saying.unitsProperty().addListener((observed, old, now) -> show());
        show();
    }

    LivePlot plot() {
        return plot;
    }

    private void show() {
        UnitSystem units = saying.unitsProperty().get();
        plot.pictureProperty().set(picture(model.view().sweepProperty().get(), flow -> ShownUnits.flow(flow, units)));
    }

    private static CurvePicture picture(SweepView view, DoubleUnaryOperator shown) {
        return new CurvePicture(
                view.band().stream()
                        .map(each -> new CurvePicture.Band(
                                each.volts(),
                                shown.applyAsDouble(each.low()),
                                shown.applyAsDouble(each.mean()),
                                shown.applyAsDouble(each.high())))
                        .toList(),
                view.dots().stream()
                        .map(each -> new CurvePicture.Dot(
                                spot(each.spot(), shown),
                                shown.applyAsDouble(each.half()),
                                way(each.leg()),
                                Standing.valueOf(each.lies().name())))
                        .toList(),
                view.now().map(each -> spot(each, shown)));
    }

    private static CurvePicture.Spot spot(SweepView.Spot spot, DoubleUnaryOperator shown) {
        return new CurvePicture.Spot(spot.volts(), shown.applyAsDouble(spot.flow()));
    }

    private static Way way(Leg leg) {
        return switch (leg) {
            case UP -> Way.UP;
            case DOWN -> Way.DOWN;
            case REPEAT -> Way.AGAIN;
        };
    }
}
