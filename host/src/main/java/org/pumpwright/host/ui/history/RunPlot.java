package org.pumpwright.host.ui.history;

import java.util.function.DoubleUnaryOperator;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableBooleanValue;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.CurvePicture;
import org.pumpwright.host.ui.control.LivePlot;
import org.pumpwright.host.ui.control.Palette;
import org.pumpwright.host.ui.work.HistoryModel;
import org.pumpwright.host.ui.work.SweepView;
import org.pumpwright.host.ui.work.Word;

/** The sweep of a run on record, over that of an earlier run where there is one, in the units of the moment. JavaFX thread only. */
final class RunPlot {
    private final Saying saying;
    private final HistoryModel model;
    private final ObjectProperty<Feature.Kind> kind = new SimpleObjectProperty<>(Feature.Kind.FLOW);
    private final LivePlot plot;

    RunPlot(Saying saying, HistoryModel model, ObservableBooleanValue dark) {
        this.saying = saying;
        this.model = model;
        plot = new LivePlot(
                saying.text("ui.history.volts"),
                saying.text(Bindings.createObjectBinding(this::title, kind, saying.unitsProperty())));
        plot.paletteProperty().bind(Palette.of(dark));
        model.shownProperty().addListener((observed, old, now) -> show());
        model.earlierProperty().addListener((observed, old, now) -> show());
        saying.unitsProperty().addListener((observed, old, now) -> show());
        kind.addListener((observed, old, now) -> show());
    }

    private Word title() {
        return kind.get() == Feature.Kind.FLOW
                ? Word.of("ui.history.flow", saying.unitsProperty().get() == UnitSystem.US ? "gal/min" : "L/min")
                : Word.of("ui.history.amps");
    }

    /** Flow, or motor current. */
    ObjectProperty<Feature.Kind> kindProperty() {
        return kind;
    }

    LivePlot plot() {
        return plot;
    }

    private void show() {
        SweepView now =
                model.shownProperty().get().map(run -> run.sweep(kind.get())).orElse(SweepView.EMPTY);
        SweepView before =
                model.earlierProperty().get().map(run -> run.sweep(kind.get())).orElse(SweepView.EMPTY);
        DoubleUnaryOperator shown = kind.get() == Feature.Kind.FLOW ? this::flow : value -> value;
        plot.pictureProperty().set(CurvePicture.of(now, shown).over(CurvePicture.of(before, shown)));
    }

    private double flow(double m3PerSecond) {
        FlowRate flow = new FlowRate(Math.max(0, m3PerSecond));
        return saying.unitsProperty().get() == UnitSystem.US ? flow.gallonsPerMinute() : flow.litresPerMinute();
    }
}
